import type {Span} from '../../support/result.ts';
import {landmarkAhead} from './landmark-ahead.ts';
import type {Law} from './law.ts';
import {constant, isExact, isSame, type LinearForm, minus, none, plus} from './linear-form.ts';
import type {Measurer} from './measure.ts';
import {type Needles, turned, withMark, worked} from './needle.ts';
import {behindRoundStart, broughtRound, pastRoundStart} from './round-needle.ts';
import type {Extent, Landmark, MarkerStep} from './row-syntax.ts';
import {RowTrouble} from './row-trouble.ts';

export interface RoundState {
  readonly isRound: boolean;
  /** Turned in a row before and not yet back at the beginning of the round. */
  readonly isTurned: boolean;
}

const flat: RoundState = {isRound: false, isTurned: false};

/** More markers than a needle carries. */
const mostMarkers = 200;

/** The needles while one row is worked: what is taken from them, and how far something lies ahead. */
export class RowNeedles {
  needles: Needles;
  used: LinearForm = none;
  made: LinearForm = none;
  turns = 0;
  protected readonly law: Law;
  protected readonly measurer: Measurer;
  /** Left needle when a marker was just reached by `to marker`: the next `to marker` means the one behind it. */
  private reached: LinearForm | null = null;
  /** A round that was turned goes on past its own beginning. */
  protected readonly isRound: boolean;
  private isTurned: boolean;
  /** Nothing was worked since the last turn. */
  private hasJustTurned = false;

  constructor(needles: Needles, law: Law, measurer: Measurer, round: RoundState = flat) {
    this.needles = needles;
    this.law = law;
    this.measurer = measurer;
    this.isRound = round.isRound;
    this.isTurned = round.isTurned;
  }

  /** Stitches still to be worked before the row or round is at its end. */
  get leftToEnd(): LinearForm {
    return minus(this.needles.left, behindRoundStart(this.needles, this.law));
  }

  /** Stitches worked past the beginning of a round that was turned. */
  get pastEnd(): LinearForm {
    return isSame(this.needles.left, none) ? pastRoundStart(this.needles) : none;
  }

  protected take(uses: LinearForm, makes: LinearForm, span: Span): void {
    this.bringRound(minus(this.needles.left, uses));
    const {left} = this.needles;
    this.hasJustTurned &&= isSame(uses, none);
    if (this.law.signOf(minus(left, uses)) < 0)
      throw new RowTrouble({kind: 'too few', needed: uses, found: left}, span);
    this.needles = worked(this.needles, uses, makes, this.law);
    this.used = plus(this.used, uses);
    this.made = plus(this.made, makes);
    if (!isExact(this.used) || !isExact(this.made)) throw new RowTrouble({kind: 'too many'}, span);
  }
  protected marker({action, name, span}: MarkerStep): void {
    const {left, right, leftMarks, rightMarks} = this.needles;
    if (action === 'place') {
      if (rightMarks.length >= mostMarkers) throw new RowTrouble({kind: 'too many markers'}, span);
      this.lay('marker', right, name);
      return;
    }
    const here = leftMarks.findIndex((mark) => mark.kind === 'marker' && isSame(mark.at, left));
    const mark = leftMarks[here];
    if (!mark) {
      if (isSame(this.leftToEnd, none) || isSame(right, none)) return;
      const next = leftMarks.find(({kind}) => kind === 'marker');
      throw new RowTrouble({kind: 'no marker here', ahead: next ? minus(left, next.at) : null}, span);
    }
    const moved = action === 'slip' ? [...rightMarks, {...mark, at: right}] : rightMarks;
    this.needles = {...this.needles, leftMarks: leftMarks.toSpliced(here, 1), rightMarks: moved};
    this.reached = null;
  }

  turn(): void {
    this.needles = turned(this.needles);
    this.lay('turn', this.needles.right);
    this.turns += 1;
    this.isTurned = true;
    this.hasJustTurned = true;
    this.reached = null;
  }

  protected lay(kind: Landmark, at: LinearForm, name: string | null = null): void {
    this.needles = withMark(this.needles, {kind, name, at}, mostMarkers);
  }

  /** How many stitches are still on the left needle when the extent is reached. */
  protected leftAt(extent: Extent, span: Span): LinearForm {
    if (extent.kind === 'to last') return plus(this.leftAtEnd(), constant(this.measurer.sized(extent.count)));
    if (extent.kind !== 'to landmark') return this.leftAtEnd();
    const {landmark, name, before, past} = extent;
    const found = landmarkAhead(extent, this.needles, this.law, this.reached);
    // In the round an unnamed marker that was not placed in the rows is the one at the beginning.
    const isRoundStart =
      landmark === 'round start' || (this.isRound && landmark === 'marker' && name === null);
    const at = found ?? (isRoundStart ? this.leftAtEnd() : null);
    if (at === null) throw new RowTrouble({kind: 'no landmark', landmark, name}, span);
    const distance = (before ? this.measurer.sized(before) : 0) - (past ? this.measurer.sized(past) : 0);
    const target = this.bringRound(plus(at, constant(distance)));
    if (this.law.signOf(minus(this.needles.left, target)) < 0) {
      throw new RowTrouble({kind: 'too close', landmark}, span);
    }
    if (landmark === 'marker' && distance === 0) this.reached = target;
    return target;
  }

  /** Where the row ends, or the round; a round that was turned at its beginning goes once round. */
  protected leftAtEnd(): LinearForm {
    if (!this.isRound || !this.isTurned) return none;
    const behind = behindRoundStart(this.needles, this.law);
    if (!isSame(this.needles.left, behind)) return behind;
    if (this.hasJustTurned) this.needles = broughtRound(this.needles, this.needles.right, this.law);
    return this.hasJustTurned ? none : behind;
  }

  /** A place past the far end of the left needle lies, in a turned round, on the stitches that come round to it. */
  private bringRound(target: LinearForm): LinearForm {
    const beyond = minus(none, target);
    if (!this.isRound || !this.isTurned || this.law.signOf(beyond) <= 0) return target;
    if (this.law.signOf(minus(this.needles.right, beyond)) < 0) return target;
    this.needles = broughtRound(this.needles, beyond, this.law);
    return none;
  }
}
