import type {Problem, Span} from '../../support/result.ts';
import {lexRow} from './lex-row.ts';
import type {Stitch} from './stitch.ts';
import {makeStitch} from './stitch-makers.ts';

/** An abbreviation that the block defines. */
export interface OwnAbbreviation {
  readonly stitch: Stitch;
  /** False when its definition is faulty: rows that use it are not counted. */
  readonly isSure: boolean;
}

/** `MB: (k1, yo, k1) in next st, …`: what it uses and makes is to be found from its words. */
export interface WordedAbbreviation {
  readonly name: string;
  readonly nameSpan: Span;
  /** The steps, as offsets in the block. */
  readonly steps: Span;
  readonly words: string;
}

const definition = /^(\s*)([^:=]{1,40}?)(\s*)[:=]\s*(.*)$/;
const numbers = /\b(uses?|consumes?|makes?|produces?)\s+([^\s,;]+)/gi;
/** As an abbreviation is written: `MB`, `T2X`, `LRD`; ordinary words and the keys of a block are not. */
const abbreviation = /^(?=.*[A-Z].*[A-Z\d])[A-Z\d][A-Za-z\d/-]{1,9}$/;
const notOwn = new Set(['RS', 'WS', 'CO', 'BO', 'K', 'P', 'MC', 'CC', 'NB']);
const mostStitches = 1_000;

/** Reads `MB: uses 1, makes 5, "make bobble"` at `offset` of the block; null when the line is something else. */
export function readOwnAbbreviation(
  line: string,
  offset: number,
  known: readonly Stitch[],
  problems: Problem[],
): OwnAbbreviation | null {
  const match = definition.exec(line);
  if (!match) return null;
  const [, indent = '', written = '', , rest = ''] = match;
  const said = [...rest.matchAll(numbers)];
  const uses = said.find(([, word = '']) => /^[uc]/i.test(word));
  const makes = said.find(([, word = '']) => /^[mp]/i.test(word));
  if (!uses && !(makes && /^produces?\b/i.test(rest))) return null;

  const before = problems.length;
  const start = offset + indent.length;
  const {name, remark} = nameOf(written);
  const nameSpan = {start, end: start + name.length};
  const restStart = offset + line.length - rest.length;
  const [used, made] = [uses, makes].map((found) => found && readNumber(found, restStart, problems));
  if (!uses || !makes) problems.push(incomplete(name, uses ? 'makes' : 'uses', nameSpan));
  if (known.some(({id}) => id === name)) problems.push(twice(name, nameSpan));
  const counts = [uses, makes].flatMap((found) => found?.[0] ?? []);
  const words = wordsOf(rest, counts) || remark || name;
  return {stitch: ownStitch(name, used ?? 1, made ?? 1, words), isSure: problems.length === before};
}

/** Reads `MB: (k1, yo, k1) in next st, turn, p3, turn, k3tog` at `offset` of the block; null when it is something else. */
export function readWordedAbbreviation(line: string, offset: number): WordedAbbreviation | null {
  const match = definition.exec(line);
  if (!match) return null;
  const [, indent = '', written = '', , rest = ''] = match;
  const {name} = nameOf(written);
  if (!abbreviation.test(name) || notOwn.has(name) || rest === '') return null;
  const start = offset + indent.length;
  const from = offset + line.length - rest.length + rest.lastIndexOf(':') + 1;
  return {
    name,
    nameSpan: {start, end: start + name.length},
    steps: {start: from, end: offset + line.length},
    words: unquoted(rest),
  };
}

export function ownStitch(name: string, uses: number, makes: number, words: string): Stitch {
  return makeStitch(
    {american: name, words},
    {uses, makes, kind: 'own', face: {shape: 'own', from: uses, into: makes}},
  );
}

/** `MB (make bobble)`. */
function nameOf(written: string): {readonly name: string; readonly remark: string} {
  const match = /^(.*?)\s*\(([^)]*)\)$/.exec(written);
  const name = match?.[1] ?? written;
  return name === '' ? {name: written, remark: ''} : {name, remark: match?.[2] ?? ''};
}

function wordsOf(rest: string, said: readonly string[]): string {
  const left = said.reduce((text, part) => text.replace(part, ''), rest);
  return unquoted(left.replace(/^[\s,;]*(?:and\b)?[\s,;]*/i, ''));
}

function unquoted(text: string): string {
  return text.replace(/^["\u201c\u201d']|["\u201c\u201d']\.?$/g, '').trim();
}

function readNumber(match: RegExpExecArray, restStart: number, problems: Problem[]): number {
  const [whole, , value = ''] = match;
  const start = restStart + match.index + whole.length - value.length;
  const span = {start, end: start + value.length};
  const [token, ...others] = lexRow(value);
  if (token?.kind !== 'number' || others.length > 0) {
    const isNone = /^(?:no|none|nothing|zero)$/i.test(value);
    if (!isNone) problems.push(noNumber(value, span));
    return isNone ? 0 : 1;
  }
  if (token.value <= mostStitches) return token.value;
  problems.push({
    message: `\`${value}\` stitches are more than one thing on the needle can use or make`,
    hint: `Write at most ${mostStitches}.`,
    span,
  });
  return 1;
}

const example = 'such as `MB: uses 1, makes 1, "make bobble"`.';

function noNumber(value: string, span: Span): Problem {
  return {
    message: `\`${value}\` is not a number of stitches`,
    hint: `Write how many stitches it uses and makes, ${example}`,
    span,
  };
}

function incomplete(name: string, missing: 'uses' | 'makes', span: Span): Problem {
  return {
    message: `\`${name}\` does not say how many stitches it ${missing}`,
    hint: `Write both, ${example}`,
    span,
  };
}

function twice(name: string, span: Span): Problem {
  return {
    message: `\`${name}\` is defined a second time`,
    hint: 'Keep one of the two lines, or give the second a name of its own.',
    span,
  };
}
