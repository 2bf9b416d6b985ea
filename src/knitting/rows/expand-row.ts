import type {Side} from './face.ts';
import type {PlannedStep} from './planned-step.ts';
import type {ProvedRow} from './prove-rows.ts';
import type {Step} from './row-syntax.ts';
import type {Stitch} from './stitch.ts';

/** One thing done, in the order of working. */
export interface StitchOperation {
  readonly step: Step;
  /** The stitch of a `work` step; its face is as seen from `side`. Null of everything else. */
  readonly stitch: Stitch | null;
  /** A bind-off that makes 1 is the loop it leaves; a `work` step that makes none of its stitch only moves the yarn. */
  readonly uses: number;
  readonly makes: number;
  readonly side: Side;
}

/**
 * The single operations of a row that was proved with `isPlanned`, one by one as they are asked for: memory does not
 * grow with the repeats. Stops where a row that does not come out stops.
 */
export function* expandRow({plan, side}: ProvedRow): Generator<StitchOperation> {
  yield* expand(plan ?? [], {side});
}

function* expand(plan: readonly PlannedStep[], state: {side: Side}): Generator<StitchOperation> {
  for (const {step, times, uses, makes, inner} of plan) {
    for (let count = 0; count < times; count++) {
      if (inner) {
        yield* expand(inner, state);
        continue;
      }
      yield {step, stitch: step.kind === 'work' ? step.stitch : null, uses, makes, side: state.side};
      if (step.kind === 'turn') state.side = state.side === 'RS' ? 'WS' : 'RS';
    }
  }
}
