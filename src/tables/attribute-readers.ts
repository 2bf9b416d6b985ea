import {mostCounted} from '../knitting/cannot-work.ts';
import {Fraction} from '../knitting/fraction.ts';
import {type GaugeCount, type Length, parseGaugeCount, parseLength} from '../knitting/quantity.ts';
import {readNumber} from '../knitting/read-number.ts';
import {millimetres} from '../knitting/units.ts';
import {type Binder, type Item, itemsById} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {failure, type Result, success} from '../support/result.ts';
import type {Reader} from './attributes.ts';

/** A whole number from 0 to 99,999; words such as `sts` or `rows` behind it are read over. */
export function count(text: string): Result<number> {
  const digits = /^\s*(?<digits>\d+)\s*(?:sts?|stitch(?:es)?|rows?|rounds?|rnds?|times)?\.?\s*$/i.exec(text)
    ?.groups?.digits;
  if (digits === undefined) {
    return unreadable(`\`${text}\` is not a whole number`, 'Write a whole number, such as `96`.');
  }
  const value = Number(digits);
  return value <= mostCounted
    ? success(value)
    : unreadable(`\`${text}\` is more than \`${mostCounted}\``, 'Check the number.');
}

export function length(text: string): Result<Length> {
  return parseLength(text);
}

/** A length that may be below zero: `-4 cm`, `6 cm`. */
export function signedLength(text: string): Result<Length> {
  const {isMinus, rest} = cutSign(text);
  const result = parseLength(rest);
  if (!result.ok || !isMinus) return result;
  return success({
    ...result.value,
    millimetres: millimetres(Fraction.zero.minus(result.value.millimetres)),
    text,
  });
}

/** `10 %`, `-4 %`, `2.5`. */
export function percent(text: string): Result<Fraction> {
  const {isMinus, rest} = cutSign(text);
  const number = readNumber(rest.trimStart());
  if (!number.ok) return number;
  if (!/^\s*(?:%|percent|per cent)?\s*$/.test(rest.trimStart().slice(number.value.end))) {
    return unreadable(`\`${text}\` is not a percentage`, 'Write a number and `%`, such as `10 %`.');
  }
  return success(isMinus ? Fraction.zero.minus(number.value.value) : number.value.value);
}

/** One count, or several with semicolons, commas or `and`: `20, 20.5 and 20 over 10 cm`; each takes the length behind it. */
export function gaugeCounts(text: string): Result<readonly GaugeCount[]> {
  const parts = text.replace(/\s+/g, ' ').split(/;|, | and /);
  const counts: GaugeCount[] = [];
  let over = '';
  for (const part of parts.toReversed()) {
    const own = /\s(?:over|per|to)\s.*$|\/ ?\d* ?\p{L}+ ?$/iu.exec(part)?.[0];
    over = own ?? over;
    const result = parseGaugeCount(own === undefined ? `${part}${over}` : part);
    if (!result.ok) return result;
    counts.unshift(result.value);
  }
  return success(counts);
}

/** The item that answers a requirement, by its id. */
export function itemNamed(attribute: string): Reader<Item> {
  return (id: string, binder: Binder) => {
    const items = itemsById(binder);
    const item = items.get(id.trim());
    if (item) return success(item);
    const near = nearestName(id, items.keys());
    return unreadable(
      `no item answers the requirement \`${id}\``,
      near
        ? `Write \`${attribute}=${near}\` if that is what was meant.`
        : `Write the id of an item, such as \`${attribute}=S-07\`.`,
    );
  };
}

/** One of a few words. */
export function oneOf<W extends string>(...words: readonly W[]): Reader<W> {
  return (text) => {
    const found = words.find((word) => word === text.trim().toLowerCase());
    if (found !== undefined) return success(found);
    const near = nearestName(text, words);
    return unreadable(
      `\`${text}\` is not known here`,
      near
        ? `Write \`${near}\` if that is what was meant.`
        : `Write ${englishList(
            words.map((word) => `\`${word}\``),
            'or',
          )}.`,
    );
  };
}

export function unreadable(message: string, hint: string): Result<never> {
  return failure({message, hint, span: {start: 0, end: 0}});
}

function cutSign(text: string): {readonly isMinus: boolean; readonly rest: string} {
  const [sign = ''] = /^\s*[+−-]?/.exec(text) ?? [];
  return {isMinus: /[−-]/.test(sign), rest: text.slice(sign.length)};
}
