import type {Step} from './row-syntax.ts';

/** A step as it is worked: so often, each time the steps of `inner`, or the stitch itself when that is null. */
export interface PlannedStep {
  readonly step: Step;
  readonly times: number;
  /** Stitches used and made each time. */
  readonly uses: number;
  readonly makes: number;
  readonly inner: readonly PlannedStep[] | null;
}
