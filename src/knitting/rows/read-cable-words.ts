import {makeCrossing} from './crossings.ts';
import type {Cursor} from './cursor.ts';
import type {Step, WorkStep} from './row-syntax.ts';
import {StepList} from './step-list.ts';
import type {Stitch} from './stitch.ts';
import {makeUntoldCrossing} from './stitch-makers.ts';

/**
 * Reads a crossing told in words: `sl 2 to cn and hold in front, k2, k2 from cn`, or in the old books `slip three on a
 * third needle, keeping it in front; knit the next three; knit the three that were slipped`. `readStep` reads one
 * step into a list.
 */
export function readCableWords(
  cursor: Cursor,
  list: StepList,
  held: number,
  from: number,
  readStep: (list: StepList) => boolean,
): void {
  const side = readHeldSide(cursor);
  const inner = new StepList();
  let isFinished = false;
  for (let steps = 0; side && steps < 6 && !isFinished; steps++) {
    while (cursor.take(',', ';', '—', '&', '.'));
    if (!readStep(inner)) break;
    isFinished = takeFromNeedle(cursor);
  }
  const span = cursor.spanFrom(from);
  const stitch = isFinished && side ? crossing(inner.steps, held, side) : null;
  if (!stitch) {
    cursor.complain(
      `the crossing \`${cursor.written(span).slice(0, 60)}\` does not say ${side ? 'what is worked from the cable needle' : 'whether the cable needle is held at the front or the back'}`,
      'Write it as `sl 2 to cn and hold in front, k2, k2 from cn`, or by its name, such as `2/2 LC`.',
      span,
    );
    return;
  }
  const extent: WorkStep['extent'] = {kind: 'times', count: {values: [1], span}};
  list.push({kind: 'work', stitch, extent, yarn: null, isDoubtful: false, span});
}

function readHeldSide(cursor: Cursor): 'front' | 'back' | null {
  for (let ahead = 0; ahead < 9; ahead++) {
    const text = cursor.peek(ahead)?.text;
    if (text !== 'front' && text !== 'back') continue;
    cursor.at += ahead + 1;
    if (cursor.take('of')) cursor.take('work');
    return text;
  }
  return null;
}

/** `from cn`, `off the cable needle`, `that were slipped on the third needle`. */
function takeFromNeedle(cursor: Cursor): boolean {
  const starts = ['from', 'off', 'that', 'on', 'which'];
  if (!starts.includes(cursor.peek()?.text ?? '')) return false;
  let isLeftNeedle = false;
  for (let ahead = 1; ahead < 10; ahead++) {
    const text = cursor.peek(ahead)?.text;
    isLeftNeedle ||= text === 'leave' || text === 'lh';
    if (text !== 'cn' && text !== 'needle') continue;
    cursor.at += ahead + 1;
    return !isLeftNeedle;
  }
  return false;
}

function crossing(steps: readonly Step[], held: number, side: 'front' | 'back'): Stitch | null {
  const runs = steps.map(plainRun);
  const last = runs.at(-1);
  const first = runs.slice(0, -1);
  if (!last || first.length === 0 || last.count !== held) return null;
  const passed = first.reduce((sum, run) => sum + (run?.count ?? Number.NaN), 0);
  if (!(passed > 0)) return null;
  const isPassedPurl = first.every((run) => run?.surface === 'purl');
  const isPassedKnit = first.every((run) => run?.surface === 'knit');
  if (side === 'front' && last.surface === 'knit' && (isPassedKnit || isPassedPurl)) {
    return makeCrossing([held, passed], 'left', isPassedPurl);
  }
  if (side === 'back' && isPassedKnit) return makeCrossing([passed, held], 'right', last.surface === 'purl');
  const width = held + passed;
  const words = `slip ${held} to the cable needle, hold at the ${side}, cross ${width} stitches`;
  return makeUntoldCrossing(width, words);
}

function plainRun(step: Step): {count: number; surface: 'knit' | 'purl'} | null {
  if (step.kind !== 'work' || step.extent.kind !== 'times') return null;
  const {id} = step.stitch;
  if (!/^[kp]( tbl)?$/.test(id)) return null;
  return {count: step.extent.count.values[0] ?? 0, surface: id.startsWith('k') ? 'knit' : 'purl'};
}
