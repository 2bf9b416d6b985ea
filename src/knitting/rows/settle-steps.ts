import type {Step} from './row-syntax.ts';
import {knit, knitTwisted, purl, purlTwisted} from './stitches.ts';

const plain = [knit, purl, knitTwisted, purlTwisted];

/** A bare `knit`, `purl` or `work in pattern` that ends the row goes on to its end. Changes `steps`. */
export function settleBare(steps: Step[]): void {
  const last = steps.at(-1);
  if (last?.kind !== 'work' || last.extent.kind !== 'times') return;
  const {span} = last.extent.count;
  const isBare = span.start === last.span.start;
  if (isBare && (plain.includes(last.stitch) || last.stitch.kind === 'as set')) {
    steps[steps.length - 1] = {...last, extent: {kind: 'to end'}};
  }
}

/**
 * `Yarn forward` makes an over before a knit stitch; before a purl or a slip it may only move the yarn, which stays
 * doubtful for the proof to settle. What follows the end of a repeat is the repeat again.
 */
export function settleYarnForward(steps: readonly Step[], after: Step | undefined = undefined): Step[] {
  return steps.map((step, index) => {
    const next = steps[index + 1] ?? after;
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
  return 'steps' in step ? isPurledOrSlipped(step.steps[0]) : false;
}
