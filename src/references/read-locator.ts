import {nearestName} from '../support/nearest-name.ts';
import {failure, type Result, type Span, success} from '../support/result.ts';
import type {Locator, LocatorLabel} from './locator.ts';
import {locatorForms, locatorLabelOf, writtenLocatorLabel} from './locator-labels.ts';
import {type LocatorValue, readLocatorValue} from './locator-value.ts';

interface LocatorAndSuffix {
  readonly locator: Locator | null;
  readonly suffix: string;
}

/**
 * Reads what follows the key of a citation: `, p. 57`, ` p. 57`, `, 57`, `, pp. 112-114, and onward`, ` and others`.
 * `start` is the offset of `text` in the text that problems count from.
 */
export function readLocator(text: string, start: number): Result<LocatorAndSuffix> {
  const opening = /^\s*,?\s*/.exec(text)?.[0] ?? '';
  const rest = text.slice(opening.length);
  const restStart = start + opening.length;
  const labelled = readLabelled(rest, restStart);
  if (labelled !== null) return labelled;
  const bare = opening.includes(',') ? readBarePage(rest, restStart) : null;
  // Without a locator the comma belongs to the suffix.
  return bare ?? success({locator: null, suffix: text.trim()});
}

const labelPattern = /^(?:(§§?|¶¶?)|(\p{L}+)(\.?))\s*/u;

/** Null when `text` begins with no label, known or mistaken, that a number follows. */
function readLabelled(text: string, start: number): Result<LocatorAndSuffix> | null {
  const match = labelPattern.exec(text);
  if (match === null) return null;
  const word = match[1] ?? match[2] ?? '';
  const written = match[0].trimEnd();
  const hasStop = match[3] === '.';
  const span = {start, end: start + written.length};
  const label = locatorLabelOf(word);
  const after = text.slice(match[0].length);
  const value = readLocatorValue(after);

  if (label === null) return value === null ? null : describeUnknownLabel(word, written, hasStop, span);
  if (value !== null) return locate(label, value, after, start + match[0].length);
  // `chapter on ribs` is a remark; `ch.` and `ch. on ribs` have lost their number.
  if (!hasStop && after !== '') return null;
  return failure({
    message: `\`${written}\` has no number after it`,
    hint: `Write the number, as in \`${written} ${label === 'time' ? '3:20' : '57'}\`, or take \`${written}\` away.`,
    span,
  });
}

/** `57`, or Roman numerals with nothing but a comma after them (`xii`): a page. */
function readBarePage(text: string, start: number): Result<LocatorAndSuffix> | null {
  const value = readLocatorValue(text);
  if (value === null) return null;
  const isNumber = /\d/.test(value.value);
  const isRoman =
    /^[ivxlc]+(?:–[ivxlc]+)?$/i.test(value.value) && /^\s*(?:,|$)/.test(text.slice(value.length));
  if (!isNumber && !isRoman) return null;
  if (!value.value.includes(':')) return locate('page', value, text, start);
  return failure({
    message: `\`${value.value}\` does not say what it counts`,
    hint: `Write \`t. ${value.value}\` for a time in a video or recording, \`p.\` and a number for a page.`,
    span: {start, end: start + value.length},
  });
}

function locate(label: LocatorLabel, {value, length}: LocatorValue, text: string, start: number) {
  if (label === 'time' && !value.split(/–|, /).every(isTime)) {
    return failure({
      message: `\`${value}\` is not a time in minutes and seconds`,
      hint: 'Write minutes and seconds with a colon, as in `t. 3:20`, or hours too, as in `t. 1:03:20`.',
      span: {start, end: start + length},
    });
  }
  return success({locator: {label, value}, suffix: text.slice(length).trim()});
}

function isTime(text: string): boolean {
  return /^(?:\d+:[0-5]\d|\d+(?::[0-5]\d){2})$/.test(text);
}

/** A word before a number that may be meant for a label; null when it is a word of a remark, such as `reprinted 1998`. */
function describeUnknownLabel(word: string, written: string, hasStop: boolean, span: Span) {
  const longForms = locatorForms.filter((form) => form.length > 1);
  const near = locatorLabelOf(nearestName(word, longForms) ?? '');
  if (near === null && !hasStop) return null;
  return failure({
    message: `\`${written}\` is not a label for a place in a source`,
    hint:
      near === null
        ? 'Write `p.`, `ch.`, `fig.`, `t.` (time), `vol.`, `no.`, `§`, `plate`, `table` or `para.` before the number.'
        : `Write \`${writtenLocatorLabel(near)}\` if you mean the ${near}.`,
    span,
  });
}
