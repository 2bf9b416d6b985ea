import type {SourceName} from '../source.ts';
import {isRecord, textOf} from './csl-record.ts';
import {plainText} from './plain-text.ts';

/** Names of another program's file. */
export interface ReadNames {
  readonly names: readonly SourceName[];
  /** Parts of names that the library has no place for. */
  readonly dropped: readonly string[];
  readonly hadMarks: boolean;
}

const nameParts = [
  'family',
  'given',
  'literal',
  'non-dropping-particle',
  'dropping-particle',
  'suffix',
] as const;
/** Told by other programs for their own use; what they say is said by the parts above too. */
const silentParts = new Set(['comma-suffix', 'static-ordering', 'parse-names', 'isInstitution']);

/** CSL-JSON's list of names, one name, or names as text with a comma after the family name. */
export function readNames(value: unknown): ReadNames {
  const names: SourceName[] = [];
  const dropped = new Set<string>();
  let hadMarks = false;
  const plain = (text: string) => {
    const read = plainText(text);
    hadMarks ||= read.hadMarks;
    return read.text;
  };
  const all: readonly unknown[] = Array.isArray(value) ? value : [value];
  for (const each of all.slice(0, mostNames)) {
    const written = isRecord(each) ? each : namedInText(textOf(each) ?? '');
    const known = nameParts
      .map((part) => [part, plain(textOf(written[part]) ?? '')] as const)
      .filter(([, text]) => text !== '' && text.length <= longestName);
    for (const part of Object.keys(written)) {
      if (!known.some(([name]) => name === part) && !silentParts.has(part)) dropped.add(part);
    }
    if (known.length > 0) names.push(Object.fromEntries(known));
  }
  if (all.length > mostNames) dropped.add(`${all.length - mostNames} more`);
  return {names, dropped: [...dropped], hadMarks};
}

/** In UTF-16 units; the longest name of a body that is printed anywhere is far shorter. */
export const longestName = 500;
/** The longest list of names that a style prints in full is far shorter. */
export const mostNames = 200;

function namedInText(text: string): SourceName {
  const [family = '', given] = text.split(/,(.*)/s);
  return given === undefined ? {literal: text} : {family, given};
}

/**
 * A family name that begins with small letters, such as `van der Berg`, taken apart as BibTeX does: the words before the
 * first that begins with a capital are the particle (Patashnik, BibTeXing, 1988, section 4).
 */
export function withParticle(name: SourceName): SourceName {
  const match = /^((?:\p{Ll}[\p{L}'’]*\s+)+)(\S.*)$/u.exec(name.family ?? '');
  if (match === null || name['non-dropping-particle'] !== undefined) return name;
  return {...name, 'non-dropping-particle': (match[1] ?? '').trim(), family: match[2]};
}
