import type {Problem} from '../../support/result.ts';
import type {Side} from '../rows/face.ts';
import {Measurer} from '../rows/measure.ts';
import {readRows} from '../rows/read-rows.ts';
import {waysToRead} from '../rows/readings.ts';
import type {Step} from '../rows/row-syntax.ts';
import type {Stitch} from '../rows/stitch.ts';
import type {ChartCell} from './chart-grid.ts';
import type {KeyLine} from './chart-lines.ts';
import {workedOnce} from './row-cells.ts';
import {faceOfStep} from './step-face.ts';

/** What a sign stands for on either side; null when the key does not say. */
export type KeyMeaning = Readonly<Record<Side, ChartCell | null>>;

/** `k (RS), p (WS)`, `ssk (RS)`, or `yo` for both sides. */
export function readKey(
  {symbol, meaning, span}: KeyLine,
  own: readonly Stitch[],
  problems: Problem[],
): KeyMeaning | null {
  const words = wordsOf(meaning);
  const cells: Record<Side, ChartCell | null> = {RS: null, WS: null};
  for (const side of ['RS', 'WS'] as const) {
    const text = words[side];
    if (text === null) continue;
    cells[side] = readCell(text, side, own);
    if (cells[side]) continue;
    problems.push({
      message: `\`${text}\` in the key of \`${symbol}\` is not one stitch`,
      hint: 'Write what is worked in one square as in written rows, such as `k2tog`, `2/2 LC` or `k (RS), p (WS)`.',
      span,
    });
    return null;
  }
  return cells;
}

function wordsOf(meaning: string): Readonly<Record<Side, string | null>> {
  const right = /^(.*?)\s*\(RS\)(?:\s*[,;]\s*(.*?)\s*\(WS\))?$/i.exec(meaning);
  if (right) return {RS: right[1] ?? '', WS: right[2] ?? null};
  const wrong = /^(.*?)\s*\(WS\)$/i.exec(meaning);
  return wrong ? {RS: null, WS: wrong[1] ?? ''} : {RS: meaning, WS: meaning};
}

const measurer = new Measurer(0, {
  'bind-off loop': waysToRead['bind-off loop'][0],
  'yarn forward': waysToRead['yarn forward'][0],
  'repeat times': waysToRead['repeat times'][0],
});

function readCell(text: string, side: Side, own: readonly Stitch[]): ChartCell | null {
  const {pattern, problems} = readRows(`Row 1: ${text}.`, own);
  const [entry, ...others] = pattern.entries;
  if (problems.length > 0 || others.length > 0 || entry?.kind !== 'row') return null;
  const [written, ...more] = entry.steps;
  if (!written || more.length > 0 || entry.stated.length > 0 || !isOnce(written)) return null;
  const step = workedOnce(written);
  const measure = step.kind === 'bind off' ? {uses: 1, makes: 0} : measurer.step(step);
  if (!measure || measure.uses + measure.makes === 0) return null;
  const {uses, makes} = measure;
  const face = faceOfStep(step, side, uses, makes);
  return {kind: 'worked', step, face, uses, makes, squares: Math.max(1, makes)};
}

/** `k` at the end of a row reads as `to end`; it is one stitch here. */
function isOnce(step: Step): boolean {
  switch (step.kind) {
    case 'work':
    case 'bind off':
      return step.extent.kind !== 'times' || step.extent.count.values.every((count) => count === 1);
    case 'cast on':
      return step.count.values.every((count) => count === 1);
    case 'into':
    case 'pass over':
      return true;
    default:
      return false;
  }
}
