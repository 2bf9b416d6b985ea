import {Cursor} from './cursor.ts';
import type {Token} from './lex-row.ts';
import {readSteps} from './read-steps.ts';
import type {Extent, RowLabel, RowRepeat, Step, WrittenRow} from './row-syntax.ts';
import {asSet, knit, purl} from './stitches.ts';

const verbs = {k: knit, plain: knit, p: purl, work: asSet} as const;
/** Behind `Knit 4 rows` these say no more. */
const tails = ['plain', 'across', 'even', 'straight', 'more', 'p', 'k'];

/**
 * Reads a sentence that is one or more rows without a label: `Knit 4 rows.`, `Purl one row.`, `Two plain rows.`, `Work 6
 * rows in St st.` Null, and nothing read, when no such sentence stands here.
 */
export function readPlainRows(cursor: Cursor): readonly (WrittenRow | RowRepeat)[] | null {
  const from = cursor.at;
  const said = readSaid(cursor);
  const rest = said && isAtEnd(cursor) ? null : said && readRest(cursor);
  if (!said || (rest !== null && (rest.length === 0 || said.stitch !== asSet))) {
    cursor.at = from;
    return null;
  }
  const span = cursor.spanFrom(from);
  const extent: Extent = {kind: 'to end'};
  const step: Step = {kind: 'work', stitch: said.stitch, extent, yarn: null, isDoubtful: false, span};
  const label: RowLabel = {
    text: said.isRound ? 'Next rnd' : 'Next row',
    span,
    isRound: said.isRound,
    ranges: [],
    every: null,
    side: null,
    sideSpan: null,
    says: null,
    isPaired: false,
    colour: null,
  };
  const row: WrittenRow = {kind: 'row', label, steps: rest ?? [step], stated: [], isWholeRead: true, span};
  if (!said.count || said.count.values.every((value) => value === 1)) return [row];
  const values = said.count.values.map((value) => Math.max(0, value - 1));
  const often: RowRepeat['often'] = {kind: 'more', count: {values, span}};
  return [row, {kind: 'repeat rows', label: null, what: {kind: 'last', count: 1}, often, stated: null, span}];
}

interface Said {
  readonly stitch: typeof knit;
  readonly count: Token | null;
  readonly isRound: boolean;
}

/** `knit 4 rows`, `purl a row`, `knit one plain row`, `two plain rows`, `a purl row`, `4 rows plain`. */
function readSaid(cursor: Cursor): Said | null {
  let stitch: Said['stitch'] | null = null;
  let count: Token | null = null;
  for (let words = 0; words < 4; words++) {
    const token = cursor.peek();
    if (!token || (words > 0 && token.startsLine)) return null;
    if (token.text === 'row' || token.text === 'round') break;
    if (token.kind === 'number' && !count) count = token;
    else if (isVerb(token.text)) stitch = stitch ?? verbs[token.text];
    else if (token.text !== 'a') return null;
    cursor.at += 1;
  }
  const isRound = cursor.is('round');
  if (!cursor.take('row', 'round') || (!stitch && !count)) return null;
  const behind = cursor.peek()?.text ?? '';
  if (!stitch && isVerb(behind)) stitch = verbs[behind];
  while (cursor.take(...tails));
  return stitch && {stitch, count, isRound};
}

function isVerb(text: string): text is keyof typeof verbs {
  return text in verbs;
}

function isAtEnd(cursor: Cursor): boolean {
  const token = cursor.peek();
  return !token || token.text === '.' || token.text === ';' || token.startsLine;
}

/** `in St st`, `in rib as set`: what the rows are worked in, up to the end of the sentence. */
function readRest(cursor: Cursor): readonly Step[] {
  if (!cursor.is('in')) return [];
  let end = cursor.at;
  const {tokens} = cursor.reading;
  while (end < cursor.to && tokens[end]?.text !== '.' && !(end > cursor.at && tokens[end]?.startsLine))
    end += 1;
  const {problems} = cursor.reading;
  const before = problems.length;
  const {steps} = readSteps(new Cursor(cursor.reading, cursor.at, end));
  const isRead = problems.length === before;
  problems.length = before;
  cursor.at = end;
  return isRead ? steps : [];
}
