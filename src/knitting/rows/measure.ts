import type {SettledReadings} from './readings.ts';
import type {Sized, Step} from './row-syntax.ts';

/** What a passage uses and makes each time it is worked. */
export interface Measure {
  readonly uses: number;
  readonly makes: number;
}

/** The ways of reading that change what a step uses. */
export type MeasuredReadings = Pick<SettledReadings, 'bind-off loop' | 'yarn forward' | 'repeat times'>;

const nothing: Measure = {uses: 0, makes: 0};

/**
 * Measures passages that use the same number of stitches wherever they stand. Each passage is measured once, so that
 * the work grows with the written text and not with how often it is worked.
 */
export class Measurer {
  readonly size: number;
  readonly readings: MeasuredReadings;
  private readonly known = new Map<readonly Step[], Measure | null>();
  private readonly tails = new Map<readonly Step[], readonly (number | null)[]>();

  constructor(size: number, readings: MeasuredReadings) {
    this.size = size;
    this.readings = readings;
  }

  /** Null when it depends on the place: `to end`, markers, turns. */
  passage(steps: readonly Step[]): Measure | null {
    let measure = this.known.get(steps);
    if (measure === undefined) {
      measure = this.sum(steps);
      this.known.set(steps, measure);
    }
    return measure;
  }

  step(step: Step): Measure | null {
    switch (step.kind) {
      case 'work': {
        const times = this.timesOf(step);
        if (times === null) return null;
        const isMoved = step.isDoubtful && this.readings['yarn forward'] === 'no stitch';
        return isMoved ? nothing : {uses: step.stitch.uses * times, makes: step.stitch.makes * times};
      }
      case 'repeat':
      case 'again': {
        const times = this.timesOf(step);
        const inner = times === null ? null : this.passage(step.steps);
        return inner && times !== null ? {uses: inner.uses * times, makes: inner.makes * times} : null;
      }
      case 'into': {
        const inner = this.passage(step.steps);
        return inner && {uses: step.uses, makes: inner.makes};
      }
      case 'pass over': {
        const inner = this.passage(step.steps);
        return inner && {uses: inner.uses, makes: Math.max(0, inner.makes - step.over)};
      }
      case 'cast on':
        return {uses: 0, makes: this.sized(step.count)};
      case 'yarn':
        return nothing;
      case 'bind off': {
        const times = step.extent.kind === 'times' ? this.sized(step.extent.count) : null;
        return times !== null && this.readings['bind-off loop'] === 'counted'
          ? {uses: times, makes: 0}
          : null;
      }
      case 'either':
        return this.passage(step.ways[0]);
      case 'marker':
      case 'turn':
      case 'evenly':
        return null;
    }
  }

  /** So often in all; null when that depends on the stitches that are there. */
  timesOf({extent}: Extract<Step, {kind: 'work' | 'repeat' | 'again'}>): number | null {
    if (extent.kind === 'times') return this.sized(extent.count);
    if (extent.kind !== 'more') return null;
    const isInAll = extent.isPlain && this.readings['repeat times'] === 'in all';
    return this.sized(extent.count) + (isInAll ? 0 : 1);
  }

  sized(count: Sized): number {
    return count.values[Math.min(this.size, count.values.length - 1)] ?? 0;
  }

  /** What the steps behind index `index` use together; null when that depends on the place. */
  usesBehind(steps: readonly Step[], index: number): number | null {
    let sums = this.tails.get(steps);
    if (!sums) {
      const behind: (number | null)[] = [0];
      for (const step of steps.toReversed()) {
        const before = behind.at(-1) ?? null;
        const uses = step.kind === 'marker' ? 0 : (this.step(step)?.uses ?? null);
        behind.push(before === null || uses === null ? null : before + uses);
      }
      sums = behind.reverse();
      this.tails.set(steps, sums);
    }
    return sums[index + 1] ?? null;
  }

  private sum(steps: readonly Step[]): Measure | null {
    let [uses, makes] = [0, 0];
    for (const step of steps) {
      const measure = this.step(step);
      if (!measure) return null;
      uses += measure.uses;
      makes += measure.makes;
    }
    return {uses, makes};
  }
}
