import type {Problem, Span} from '../../support/result.ts';
import type {Doubt, Readings} from './row-syntax.ts';

/** What the proof uses where authors differ; null in `Readings` means: whichever makes the whole pattern come out. */
export interface SettledReadings {
  readonly 'bind-off loop': 'separate' | 'counted';
  readonly 'yarn forward': 'no stitch' | 'yarn over';
  readonly 'repeat times': 'more' | 'in all';
  readonly 'passage times': 'passage' | 'last stitch';
  readonly 'last repeat': 'replaced' | 'cut short';
}

/**
 * The first way of each is tried first. `separate`: the loop left by binding off is not one of the stitches that the
 * text counts next. `no stitch`: yarn forward before a purl or a slip only moves the yarn. `more`: `rep from * 3 times`
 * means three times after the first. `passage`: in `yo, k2tog, 3 times` both are worked three times. `replaced`: in
 * `ending last rep k1` the k1 stands for the last stitches of the repeat; `cut short`: the last time stops with it.
 * Common practice; the published patterns show both.
 */
export const waysToRead: {readonly [D in Doubt]: readonly [SettledReadings[D], SettledReadings[D]]} = {
  'bind-off loop': ['separate', 'counted'],
  'yarn forward': ['no stitch', 'yarn over'],
  'repeat times': ['more', 'in all'],
  'passage times': ['passage', 'last stitch'],
  'last repeat': ['replaced', 'cut short'],
};

export const noReadings: Readings = {
  bindOffLoop: null,
  yarnForward: null,
  repeatTimes: null,
  passageTimes: null,
  lastRepeat: null,
  makeOne: 'lifted strand',
};

/** Every line that a `reading:` may say, and what it settles. */
const lines: readonly (readonly [string, Partial<Readings>])[] = [
  ['bind-off loop separate', {bindOffLoop: 'separate'}],
  ['bind-off loop counted', {bindOffLoop: 'counted'}],
  ['yarn forward makes no stitch', {yarnForward: 'no stitch'}],
  ['yarn forward makes a stitch', {yarnForward: 'yarn over'}],
  ['repeat times more', {repeatTimes: 'more'}],
  ['repeat times in all', {repeatTimes: 'in all'}],
  ['times of the passage', {passageTimes: 'passage'}],
  ['times of the last stitch', {passageTimes: 'last stitch'}],
  ['last repeat replaced', {lastRepeat: 'replaced'}],
  ['last repeat cut short', {lastRepeat: 'cut short'}],
  ['make 1 lifted strand', {makeOne: 'lifted strand'}],
  ['make 1 yarn over', {makeOne: 'yarn over'}],
];

/** Adds what a `reading:` line settles; several are parted by `;`. */
export function readReading(text: string, before: Readings, span: Span, problems: Problem[]): Readings {
  let readings = before;
  for (const part of text.split(/[;,]/)) {
    const said = part.trim().toLowerCase().replace(/\s+/g, ' ');
    if (said === '') continue;
    const line = lines.find(([words]) => words === said);
    if (line) readings = {...readings, ...line[1]};
    else {
      problems.push({
        message: `\`${part.trim()}\` is not a reading that is known here`,
        hint: `Write one of ${lines.map(([words]) => `\`${words}\``).join(', ')}.`,
        span,
      });
    }
  }
  return readings;
}

/** The ways in which the open doubts can be read, the customary one first. */
export function readingsToTry(readings: Readings, doubts: ReadonlySet<Doubt>): SettledReadings[] {
  const bindOff = choices('bind-off loop', readings.bindOffLoop, doubts);
  const forward = choices('yarn forward', readings.yarnForward, doubts);
  const repeat = choices('repeat times', readings.repeatTimes, doubts);
  const passage = choices('passage times', readings.passageTimes, doubts);
  const last = choices('last repeat', readings.lastRepeat, doubts);
  return last.flatMap((end) =>
    passage.flatMap((clause) =>
      repeat.flatMap((times) =>
        forward.flatMap((yarn) =>
          bindOff.map((loop) => ({
            'bind-off loop': loop,
            'yarn forward': yarn,
            'repeat times': times,
            'passage times': clause,
            'last repeat': end,
          })),
        ),
      ),
    ),
  );
}

function choices<D extends Doubt>(
  doubt: D,
  settled: SettledReadings[D] | null,
  doubts: ReadonlySet<Doubt>,
): readonly SettledReadings[D][] {
  if (settled !== null) return [settled];
  const [customary, other] = waysToRead[doubt];
  return doubts.has(doubt) ? [customary, other] : [customary];
}
