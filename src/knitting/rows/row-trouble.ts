import type {Span} from '../../support/result.ts';
import type {LinearForm} from './linear-form.ts';
import type {Landmark} from './row-syntax.ts';

/** Why a row does not come out, with the counts that show it. */
export type Trouble =
  | {readonly kind: 'left over'; readonly left: LinearForm}
  | {readonly kind: 'too few'; readonly needed: LinearForm; readonly found: LinearForm}
  | {
      readonly kind: 'repeat not whole';
      readonly found: LinearForm;
      readonly uses: number;
      readonly over: number;
    }
  | {readonly kind: 'no repeat'; readonly found: LinearForm; readonly uses: number}
  | {readonly kind: 'endless repeat'}
  | {readonly kind: 'unclear end'}
  | {readonly kind: 'no landmark'; readonly landmark: Landmark; readonly name: string | null}
  | {readonly kind: 'no marker here'; readonly ahead: LinearForm | null}
  | {readonly kind: 'too close'; readonly landmark: Landmark}
  | {readonly kind: 'too many'}
  | {readonly kind: 'too many markers'};

/** Thrown where a row stops making sense, and caught where the row is proved. */
export class RowTrouble extends Error {
  override readonly name = 'RowTrouble';
  readonly trouble: Trouble;
  readonly span: Span;

  constructor(trouble: Trouble, span: Span) {
    super(trouble.kind);
    this.trouble = trouble;
    this.span = span;
  }
}

/** Whether a place was sought that the rows before should have marked. */
export function isAboutMarkers({trouble}: RowTrouble): boolean {
  return ['no landmark', 'no marker here', 'too close'].includes(trouble.kind);
}
