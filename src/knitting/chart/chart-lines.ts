import type {Problem, Span} from '../../support/result.ts';
import {marks} from './chart-text.ts';

export interface KeyLine {
  readonly symbol: string;
  readonly meaning: string;
  readonly span: Span;
}

export interface Square {
  readonly symbol: string;
  readonly span: Span;
}

/** One line of the grid. `bars` stand before the square of that index. */
export interface GridLine {
  readonly number: number | null;
  readonly squares: readonly Square[];
  readonly bars: readonly number[];
  readonly span: Span;
}

export interface ChartLines {
  /** The text with everything but its header lines blanked, so that offsets stay true. */
  readonly header: string;
  readonly key: readonly KeyLine[];
  /** The lowest line first, as it is worked. */
  readonly lines: readonly GridLine[];
}

const keyLine = /^(\s*)(\S+)\s+=\s+(\S.*?)\s*$/;
const headerLine = /^\s*(?:(?:worked\s+)?in the round\.?\s*$|\p{L}[\p{L}\d ]*:)/iu;
const fixed: ReadonlySet<string> = new Set(Object.values(marks));

/** Sorts the lines of a `chart` block into header, key and grid. */
export function chartLines(text: string, problems: Problem[]): ChartLines {
  const key = new Map<string, KeyLine>();
  const header: string[] = [];
  const drawn: {readonly line: string; readonly start: number}[] = [];
  let start = 0;
  for (const line of text.split('\n')) {
    const entry = keyLine.exec(line);
    const isHeader = !entry && headerLine.test(line);
    header.push(isHeader ? line : ' '.repeat(line.length));
    if (entry) addKey(entry, start, key, problems);
    else if (!isHeader && line.trim() !== '') drawn.push({line, start});
    start += line.length + 1;
  }
  const symbols = new Set([...key.keys(), ...fixed]);
  const lines = drawn.map(({line, start}) => readLine(line, start, symbols)).reverse();
  return {header: header.join('\n'), key: [...key.values()], lines};
}

function addKey(
  [, indent = '', symbol = '', meaning = '']: RegExpExecArray,
  start: number,
  key: Map<string, KeyLine>,
  problems: Problem[],
): void {
  const from = start + indent.length;
  const span = {start: from, end: from + symbol.length};
  const complain = (message: string, hint: string) => problems.push({message, hint, span});
  if (fixed.has(symbol)) {
    complain(`\`${symbol}\` has a fixed meaning in a chart`, 'Take another sign for the stitch.');
  } else if (/^\d+$/.test(symbol)) {
    complain(`\`${symbol}\` reads as a row number`, 'Take a letter or another sign for the stitch.');
  } else if (key.has(symbol)) {
    complain(`\`${symbol}\` stands twice in the key`, 'Give each line of the key a sign of its own.');
  } else
    key.set(symbol, {symbol, meaning, span: {start: from, end: from + symbol.length + 3 + meaning.length}});
}

function readLine(line: string, start: number, symbols: ReadonlySet<string>): GridLine {
  const pieces = [...line.matchAll(/\S+/g)].map((match) => ({text: match[0], at: start + match.index}));
  const isNumber = (index: number) => pieces.length > 1 && /^\d{1,4}$/.test(pieces.at(index)?.text ?? '');
  const [left, right] = [isNumber(0), isNumber(-1)];
  const number = left ? pieces[0]?.text : right ? pieces.at(-1)?.text : undefined;
  const squares: Square[] = [];
  const bars: number[] = [];
  for (const {text, at} of pieces.slice(left ? 1 : 0, right ? -1 : undefined)) {
    for (const {symbol, offset} of signsOf(text, symbols)) {
      if (symbol === marks.bar) bars.push(squares.length);
      else squares.push({symbol, span: {start: at + offset, end: at + offset + symbol.length}});
    }
  }
  const end = start + line.trimEnd().length;
  return {number: number === undefined ? null : Number(number), squares, bars, span: {start, end}};
}

/** Signs need no space between them when each is a single character of the key. */
function signsOf(
  text: string,
  symbols: ReadonlySet<string>,
): {readonly symbol: string; readonly offset: number}[] {
  if (symbols.has(text)) return [{symbol: text, offset: 0}];
  const single: {symbol: string; offset: number}[] = [];
  let offset = 0;
  for (const symbol of text) {
    if (!symbols.has(symbol)) return [{symbol: text, offset: 0}];
    single.push({symbol, offset});
    offset += symbol.length;
  }
  return single;
}
