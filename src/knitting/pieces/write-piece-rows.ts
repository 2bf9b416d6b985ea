import {plural} from '../../support/plural.ts';
import type {EdgeWork} from './edge-plan.ts';
import {foldRows} from './fold-rows.ts';
import type {Run, WorkedPiece, WorkedPieceRow} from './worked-piece.ts';

/** The written rows of one run, as a block that can be read and proved. */
export interface WrittenRun {
  readonly title: string | null;
  /** A `rows` block. */
  readonly text: string;
  /** On the needle after its last row. */
  readonly stitches: number;
  /** What is done with them, such as `Bind off the last 8 stitches.`; null when another block goes on with them. */
  readonly ending: string | null;
}

/**
 * The piece as written rows in stockinette, one block for each run; a block counts its rows from 1. Decreases lie one
 * stitch inside the edge, ssk at the right and k2tog at the left. Rows that come again are written once.
 */
export function writePieceRows({panels}: WorkedPiece): readonly WrittenRun[] {
  return panels.flatMap(({base, parts, isRound}) =>
    [base, ...parts].flatMap((run) =>
      stretchesOf(run).map((rows, index, all) => ({
        title: run.name,
        stitches: rows.at(-1)?.after ?? 0,
        ending: index === all.length - 1 ? endingWords(run) : null,
        text: writeStretch(rows, isRound, index === 0 && run === panels[0]?.base),
      })),
    ),
  );
}

function endingWords({ending, endStitches}: Run): string | null {
  if (ending === null || endStitches === 0) return null;
  const last = `the last ${plural(endStitches, 'stitch', 'stitches')}`;
  switch (ending) {
    case 'bound off':
      return `Bind off ${last}.`;
    case 'held':
      return `Put ${last} on a holder.`;
    case 'drawn up':
      return `Draw the yarn through ${last} and pull up.`;
    case 'grafted':
      return `Graft ${last}, half of them to the other half.`;
  }
}

/** A row that begins with other stitches than the one before it ended with begins a block of its own. */
function stretchesOf(run: Run): readonly (readonly WorkedPieceRow[])[] {
  const stretches: WorkedPieceRow[][] = [];
  for (const row of run.rows.filter(({before}) => before > 0)) {
    const current = stretches.at(-1);
    if (current?.at(-1)?.after === row.before) current.push(row);
    else stretches.push([row]);
  }
  return stretches;
}

function writeStretch(rows: readonly WorkedPieceRow[], isRound: boolean, isCastOn: boolean): string {
  const waiting = {left: 0, right: 0};
  const written = rows.map((row) => {
    const isRight = isRound || row.number % 2 === 1;
    for (const edge of ['left', 'right'] as const)
      if (row[edge].kind === 'leave') waiting[edge] += row[edge].count;
    const words = isRound ? roundWords(row) : rowWords(row, isRight, isRight ? waiting.left : waiting.right);
    return {words, isRight, after: row.after, isChanged: row.before !== row.after};
  });
  const head = [
    `${isCastOn ? 'cast on' : 'stitches'}: ${rows[0]?.before ?? 0}`,
    ...(isRound ? ['in the round'] : []),
  ];
  return [...head, ...foldRows(written, isRound), ''].join('\n');
}

/** `waiting` are the stitches that short rows have left at the edge where the row ends, with those of this row. */
function rowWords({left, right, before}: WorkedPieceRow, isRight: boolean, waiting: number): string {
  const hand = isRight ? 'k' : 'p';
  const evenly = evenlyWords(left, before, hand);
  if (evenly) return evenly;
  const [first, last] = isRight ? [right, left] : [left, right];
  if (first.kind === 'bind off' && first.count === before) return `Bind off ${before}`;
  if (last.kind === 'leave') return `${hand.toUpperCase()} to last ${waiting} sts, turn`;
  const edge = hasRoom(first, last, before) ? [`${hand}1`] : [];
  const beginning = beginningWords(first, isRight, edge);
  const end = endWords(last, isRight, edge);
  if (beginning.length + end.length === 0) return isRight ? 'Knit' : 'Purl';
  const kept = edge.length + last.count * (last.kind === 'decrease' ? 2 : 0);
  const middle =
    end.length > 0 && kept > 0 ? `${hand} to last ${kept} ${kept === 1 ? 'st' : 'sts'}` : `${hand} to end`;
  return capitalised([...beginning, middle, ...end].join(', '));
}

/** Whether a stitch at each shaped edge stays plain; on the last few stitches of a point none can. */
function hasRoom(first: EdgeWork, last: EdgeWork, before: number): boolean {
  const used = [first, last].map(({kind, count}) => {
    if (kind === 'bind off') return count;
    return kind === 'decrease' ? count * 2 + 1 : kind === 'increase' ? 1 : 0;
  });
  return used.reduce((total, count) => total + count, 0) <= before;
}

function beginningWords(
  {kind, count}: EdgeWork,
  isRight: boolean,
  edge: readonly string[],
): readonly string[] {
  if (kind === 'bind off') return [`bind off ${count}`];
  if (kind === 'decrease') return [...edge, ...repeated(isRight ? 'ssk' : 'p2tog', count)];
  return kind === 'increase' ? [...edge, ...repeated(isRight ? 'm1' : 'm1p', count)] : [];
}

function endWords({kind, count}: EdgeWork, isRight: boolean, edge: readonly string[]): readonly string[] {
  if (kind === 'decrease') return [...repeated(isRight ? 'k2tog' : 'ssp', count), ...edge];
  return kind === 'increase' ? [...repeated(isRight ? 'm1' : 'm1p', count), ...edge] : [];
}

function roundWords({left, right, before, after}: WorkedPieceRow): string {
  const evenly = evenlyWords(left, before, 'k');
  if (evenly) return evenly;
  if (before === after) return 'Knit';
  const isAlike = left.kind === right.kind && left.count === right.count && before % 2 === 0;
  const plain = before / 2 - 2 - left.count * (left.kind === 'decrease' ? 2 : 0);
  const isPaired = isAlike && left.count % 2 === 0 && plain >= 0;
  if (!isPaired) return acrossWords(before, after);
  const [one, other] = left.kind === 'decrease' ? ['ssk', 'k2tog'] : ['m1', 'm1'];
  const half = left.count / 2;
  const middle = plain > 0 ? [`k${plain}`] : [];
  return `*K1, ${[...repeated(one, half), ...middle, ...repeated(other, half)].join(', ')}, k1; rep from * to end`;
}

/** An even spread that comes out is written as a repeat, any other one as so many across. */
function evenlyWords({kind, count}: EdgeWork, before: number, hand: 'k' | 'p'): string | null {
  if (!kind.startsWith('evenly') || count === 0) return null;
  const isDecrease = kind === 'evenly decrease';
  const plain = before / count - (isDecrease ? 2 : 0);
  if (!Number.isInteger(plain)) return acrossWords(before, before + (isDecrease ? -count : count));
  const work = isDecrease ? `${hand}2tog` : hand === 'k' ? 'm1' : 'm1p';
  return `*${capitalised(plain > 0 ? `${hand}${plain}, ${work}` : work)}; rep from * to end`;
}

function acrossWords(before: number, after: number): string {
  return after < before
    ? `Dec ${before - after} sts evenly across`
    : `Inc ${after - before} sts evenly across`;
}

function repeated(word: string, count: number): readonly string[] {
  return Array.from({length: count}, () => word);
}

function capitalised(words: string): string {
  return words.replace(/[a-z]/i, (letter) => letter.toUpperCase());
}
