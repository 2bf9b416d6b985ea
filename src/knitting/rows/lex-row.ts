import {isSilent, normalWord} from './normal-words.ts';
import {cardinals, multiplicatives, ordinals} from './number-words.ts';

export type TokenKind = 'word' | 'number' | 'ordinal' | 'mark' | 'sign';

/** The smallest piece of written rows: letters, a number with its sizes, or one sign. `k2tog` is three of them. */
export interface Token {
  readonly kind: TokenKind;
  /** A word in its normal spelling, lower case; a number in digits; a sign or mark as written, every dash as `—`. */
  readonly text: string;
  /** Of numbers, ordinals and `twice`; else 0. */
  readonly value: number;
  /** Of a number one for each size, `84 (92, 100)`; a single one counts for all; else empty. */
  readonly values: readonly number[];
  readonly start: number;
  readonly end: number;
  /** It is the first on its line. */
  readonly startsLine: boolean;
  /** White space stands before it. */
  readonly isApart: boolean;
  /** `then` stands before it: something new begins. */
  readonly isAfterThen: boolean;
}

/** Counts above this are no knitting; a larger number is read as this one, so that sums stay exact. */
export const largestNumber = 1_000_000;

type Word = Pick<Token, 'kind' | 'text' | 'value' | 'values'>;

/** Never fails: every character that is neither space, quotation mark nor a word without meaning is of one token. */
export function lexRow(text: string): Token[] {
  const tokens: Token[] = [];
  const words = new Map<string, Word | null>();
  let startsLine = true;
  let isApart = true;
  let isAfterThen = false;
  for (let start = 0; start < text.length; ) {
    const code = text.charCodeAt(start);
    if (isSpace(code)) {
      startsLine ||= code === newLine;
      isApart = true;
      start += 1;
      continue;
    }
    const end = endOfPiece(text, start, code);
    if (code === stop && end === start + 1 && !isApart && isStopOfAbbreviation(text, tokens.at(-1), end)) {
      start = end;
      isApart = true;
      continue;
    }
    if (code === hyphen && end === start + 1 && isHyphenInWord(text, start, isApart)) {
      start = end;
      continue;
    }
    const written = text.slice(start, end).replace(innerStops, '');
    let word = words.get(written);
    if (word === undefined) {
      word = readPiece(written);
      words.set(written, word);
    }
    if (word) {
      const {kind, text: normal, value, values} = word;
      push(text, tokens, {kind, text: normal, value, values, start, end, startsLine, isApart, isAfterThen});
      startsLine = false;
    }
    isAfterThen = word === null && (isAfterThen || written.toLowerCase() === 'then');
    isApart = word === null;
    start = end;
  }
  return tokens;
}

const newLine = 10;
const stop = 46;
const hyphen = 45;
const star = 42;
const apostrophe = 39;
const curlyApostrophe = 0x2019;
const ordinalEnd = /(?:st|nd|rd|th|d)(?![\p{L}\d])/uy;
const letter = /\p{L}/u;
const innerStops = /(?<=\p{L})\.(?=\p{L})/gu;
/** `p.s.s.o.`, `t.b.l.`: letters parted by stops, two at least; without the last stop. */
const initials = /\p{L}(?:\.\p{L}(?![\p{L}\d]))+/uy;
/** Words that old and British books cut short with a stop, in their normal spelling. */
const shortened = new Set(
  (
    'k p sl st tog rep inc dec next alternate begin continue remain pattern yarn fwd round row yd ins m psso tbl yrn ' +
    'yfwd yon wl wfwd patt cont w t n f d b l s over last marker needle no'
  ).split(' '),
);
/** Of these a number behind the stop is how many; behind others, such as `sts. 20`, it begins something new. */
const counted = new Set(['k', 'p', 'sl', 'm', 'inc', 'dec', 'next', 'n', 'd', 'over', 'no']);
const marks = new Set(['\u2020', '\u2021', '\u00a7', '#']);
const dashes = new Set(['\u2012', '\u2013', '\u2014', '\u2015', '\u2212']);

/** Letters, digits with `1st` and its like, a run of stars, a run of hyphens, or one character. */
function endOfPiece(text: string, start: number, code: number): number {
  let end = start + 1;
  if (isDigit(code)) {
    while (isDigit(text.charCodeAt(end))) end += 1;
    ordinalEnd.lastIndex = end;
    return end + (ordinalEnd.exec(text)?.[0].length ?? 0);
  }
  if (isLetter(text, start, code)) {
    initials.lastIndex = start;
    const dotted = initials.exec(text)?.[0] ?? '';
    if (isInitials(dotted)) return start + dotted.length;
    for (let next = text.charCodeAt(end); isLetter(text, end, next) || isApostrophe(next); ) {
      end += 1;
      next = text.charCodeAt(end);
    }
    return end;
  }
  if (code === star || code === hyphen) while (text.charCodeAt(end) === code) end += 1;
  else if (code >= 0xd800 && code < 0xdc00 && end < text.length) end += 1;
  return end;
}

/** Only what is known without its stops: `k.p.k.` are three stitches. */
function isInitials(dotted: string): boolean {
  return initialWords.has(dotted.replaceAll('.', '').toLowerCase());
}

const initialWords = new Set(
  'psso tbl yrn yfwd yon yfrn skpo sso ssk wyif wyib rs ws mc cc wlfwd pwise kwise'.split(' '),
);

/** The stop of `k. 2`, `sl. 1` and `rep. from` ends no sentence; that of `Purl.` and before a capital does. */
function isStopOfAbbreviation(text: string, before: Token | undefined, end: number): boolean {
  if (before?.kind !== 'word' || !shortened.has(before.text) || before.end !== end - 1) return false;
  if (!/^(?:\p{L}{1,5}|\p{L}(?:\.\p{L})+)$/u.test(text.slice(before.start, before.end))) return false;
  if (fullWords.has(text.slice(before.start, before.end).toLowerCase())) return false;
  const behind = /^[ \t\u00a0]*(\S*)/u.exec(text.slice(end, end + 12))?.[1] ?? '';
  if (/^\d/.test(behind)) return counted.has(before.text) && !/^\d+(?:st|nd|rd|th|d)\b/.test(behind);
  return /^[\p{Ll},;)\]]/u.test(behind);
}

const fullWords = new Set(
  'knit purl slip next round row pearl seam over last pass yarn wool make'.split(' '),
);

/** Quotation marks around a name, as in `marker "A"`, say no more than space. */
function isSpace(code: number): boolean {
  return (
    code <= 32 ||
    code === 34 ||
    code === 0x201c ||
    code === 0x201d ||
    code === 0xa0 ||
    (code >= 0x2000 && code <= 0x200b) ||
    code === 0x202f ||
    code === 0xfeff
  );
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function isLetter(text: string, at: number, code: number): boolean {
  if (code < 128) return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
  return letter.test(text[at] ?? '');
}

function isApostrophe(code: number): boolean {
  return code === apostrophe || code === curlyApostrophe;
}

function readPiece(written: string): Word | null {
  const code = written.charCodeAt(0);
  if (isDigit(code)) {
    return numberOf(
      isDigit(written.charCodeAt(written.length - 1)) ? 'number' : 'ordinal',
      Number.parseInt(written, 10),
    );
  }
  if (isLetter(written, 0, code)) return readWord(written);
  if (code === star || marks.has(written)) return {kind: 'mark', text: written, value: 0, values: []};
  const isDash = dashes.has(written) || (code === hyphen && written.length > 1);
  return {kind: 'sign', text: isDash ? '—' : written === '\u00d7' ? 'x' : written, value: 0, values: []};
}

/** A word as a token of it has it, so that phrases can be written naturally; null when it has no meaning. */
export function phraseWord(word: string): string | null {
  const read = readWord(word);
  return read === null ? null : read.text;
}

const apostrophes = /[\u2019']/g;

function readWord(written: string): Word | null {
  const word = written.toLowerCase().replace(apostrophes, '');
  if (isSilent(word)) return null;
  const cardinal = cardinals.get(word);
  if (cardinal !== undefined) return numberOf('number', cardinal);
  const ordinal = ordinals.get(word);
  if (ordinal !== undefined) return numberOf('ordinal', ordinal);
  return {kind: 'word', text: normalWord(word), value: multiplicatives.get(word) ?? 0, values: []};
}

function numberOf(kind: 'number' | 'ordinal', written: number): Word {
  const value = Math.min(written, largestNumber);
  return {kind, text: `${value}`, value, values: kind === 'number' ? [value] : []};
}

/** Joins the words of one number, and a number with the sizes behind it, into one token. */
function push(text: string, tokens: Token[], token: Token): void {
  const joined = joinWords(text, tokens, token);
  if (joined) {
    tokens.splice(tokens.length - joined.takes, joined.takes, joined.token);
    return;
  }
  tokens.push(token);
  if (token.text === ')' || token.text === ']') joinSizes(tokens);
}

/** `twenty` and `four`, `two` and `hundred`, `a` and `hundred`, `hundred and` and `four`: the tokens it takes up. */
function joinWords(
  text: string,
  tokens: readonly Token[],
  token: Token,
): {token: Token; takes: number} | null {
  const isWritten = (other: Token | undefined): other is Token =>
    (other?.kind === 'number' || other?.kind === 'ordinal') && !isDigit(text.charCodeAt(other.start));
  if (!isWritten(token)) return null;
  const isAnd = tokens.at(-1)?.text === '&';
  const before = tokens.at(isAnd ? -2 : -1);
  if (!before) return null;
  const value = joinedValue(before, token, isWritten(before), isAnd);
  if (value === null) return null;
  const word = numberOf(token.kind === 'ordinal' ? 'ordinal' : 'number', value);
  return {token: {...before, ...word, end: token.end}, takes: isAnd ? 2 : 1};
}

function joinedValue(before: Token, token: Token, isNumber: boolean, isAnd: boolean): number | null {
  const {value} = token;
  if (value === 100 && !isAnd) {
    if (before.text === 'a') return 100;
    return isNumber && before.value < 10 ? before.value * 100 : null;
  }
  if (!isNumber || before.kind !== 'number') return null;
  if (before.value >= 100 && before.value % 100 === 0 && before.value < 1_000 && value < 100) {
    return before.value + value;
  }
  const isTens = before.value % 10 === 0 && before.value >= 20 && before.value <= 90;
  return isTens && !isAnd && value >= 1 && value <= 9 ? before.value + value : null;
}

/** More sizes than any pattern has; bounds how far back a closing bracket looks. */
const mostSizes = 40;

/** `84`, `(`, `92`, `,`, `100`, `)` → one number. A dash stands for a size that works none. */
function joinSizes(tokens: Token[]): void {
  const values: number[] = [];
  const last = tokens.length - 1;
  for (let index = last - 1; index > 0 && last - index <= 2 * mostSizes; index--) {
    const token = tokens[index];
    if (!token) return;
    if (token.kind === 'number' && token.values.length === 1) values.unshift(token.value);
    else if (token.text === '—' || token.text === '-') values.unshift(0);
    else if (token.text === '(' || token.text === '[') {
      const first = tokens[index - 1];
      if (first?.kind !== 'number' || first.values.length !== 1 || values.length === 0) return;
      const end = tokens[last]?.end ?? first.end;
      tokens.splice(index - 1, last - index + 2, {...first, values: [first.value, ...values], end});
      return;
    } else if (token.text !== ',' && token.text !== ':' && token.text !== ';') return;
  }
}

/** The hyphen of `k1-tbl` and `slip-stitch` joins; that of `3-8` and of ` - ` separates. */
function isHyphenInWord(text: string, at: number, isApart: boolean): boolean {
  if (isApart) return false;
  const next = text.charCodeAt(at + 1);
  return isLetter(text, at + 1, next) || (isDigit(next) && isLetter(text, at - 1, text.charCodeAt(at - 1)));
}
