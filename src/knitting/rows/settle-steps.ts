import type {Step} from './row-syntax.ts';
import {asSet, knit, knitTwisted, purl, purlTwisted} from './stitches.ts';

const plain = [knit, purl, knitTwisted, purlTwisted];

/** A bare `knit`, `purl` or `work in pattern` that ends the row goes on to its end. Changes `steps`. */
export function settleBare(steps: Step[]): void {
  const last = steps.at(-1);
  if (last?.kind !== 'work' || last.extent.kind !== 'times') return;
  const {span} = last.extent.count;
  const isBare = span.start === last.span.start && span.end === last.span.end;
  if (isBare && (plain.includes(last.stitch) || last.stitch.kind === 'as set')) {
    steps[steps.length - 1] = {...last, extent: {kind: 'to end'}};
  }
}

/** `Bind off until 5 sts remain` at the end of a row: those are worked as the pattern is set. Changes `steps`. */
export function settleBindOff(steps: Step[]): void {
  const last = steps.at(-1);
  if (last?.kind !== 'bind off' || last.extent.kind !== 'to last') return;
  const {span} = last;
  steps.push({kind: 'work', stitch: asSet, extent: {kind: 'to end'}, yarn: null, isDoubtful: false, span});
}

/**
 * `Yarn forward` makes an over before a knit stitch; before a purl or a slip it may only move the yarn, which stays
 * doubtful for the proof to settle. What follows the end of a repeat is the repeat again.
 */
export function settleYarnForward(steps: readonly Step[], after: Step | undefined = undefined): Step[] {
  return steps.map((step, index) => {
    const next = steps[index + 1] ?? after;
    if (step.kind === 'either') {
      const [first, second] = step.ways;
      return {...step, ways: [settleYarnForward(first, next), settleYarnForward(second, next)]};
    }
    if ('steps' in step) return {...step, steps: settleYarnForward(step.steps, loopStart(step) ?? next)};
    if (step.kind !== 'work' || !step.isDoubtful) return step;
    return {...step, isDoubtful: isPurledOrSlipped(next)};
  });
}

function loopStart(step: Step): Step | undefined {
  return step.kind === 'repeat' || step.kind === 'again' ? step.steps[0] : undefined;
}

function isPurledOrSlipped(step: Step | undefined): boolean {
  if (!step) return false;
  if (step.kind === 'work') return step.stitch.hand === 'purl' || step.stitch.hand === 'slip';
  if (step.kind === 'either') return isPurledOrSlipped(step.ways[0][0]);
  return 'steps' in step ? isPurledOrSlipped(step.steps[0]) : false;
}
