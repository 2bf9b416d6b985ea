import type {Problem} from '../../support/result.ts';
import type {Side} from './face.ts';
import type {LinearForm} from './linear-form.ts';
import type {PlannedStep} from './planned-step.ts';
import type {RowTurn} from './row-order.ts';

/** The counts of one row as worked. `unworked` stitches were left on the needle at a turn. */
export interface WorkedRow {
  readonly turn: RowTurn;
  /** Such as `Row 3`; of a range, the single row. */
  readonly label: string;
  readonly side: Side;
  readonly in: LinearForm;
  readonly used: LinearForm;
  readonly made: LinearForm;
  readonly out: LinearForm;
  readonly unworked: LinearForm;
  /** So often in all does it come again, with the same counts, in a repeat of rows. */
  readonly times: number;
  readonly isSound: boolean;
  /** How it is worked, when that was asked for. */
  readonly plan: readonly PlannedStep[] | null;
}

export interface WorkedPattern {
  readonly rows: readonly WorkedRow[];
  readonly problems: readonly Problem[];
  readonly visited: number;
}
