import type {Span} from '../../support/result.ts';
import {constant, isSame, type LinearForm, minus, none, plus, times} from './linear-form.ts';
import type {Measure} from './measure.ts';
import type {PlannedStep} from './planned-step.ts';
import {RowNeedles} from './row-needles.ts';
import type {BindOffStep, EvenlyStep, Step} from './row-syntax.ts';
import {RowTrouble} from './row-trouble.ts';
import {doubleStitch} from './stitches.ts';

type RepeatedStep = Extract<Step, {kind: 'work' | 'repeat' | 'again'}>;

/** Passages whose use depends on the place (markers) are followed one by one, for at most so many steps of a row. */
const mostFollowed = 10_000;
/** Works one row on the needles, counting. Throws `RowTrouble` where it does not come out. */
export class RowWorker extends RowNeedles {
  endsWithTurn = false;
  /** How many steps were looked at: the measure of the work done. */
  visited = 0;

  work(steps: readonly Step[], plan: PlannedStep[] | null): void {
    steps.forEach((step, index) => {
      this.visited += 1;
      this.endsWithTurn = step.kind === 'turn';
      switch (step.kind) {
        case 'work':
        case 'repeat':
        case 'again':
          this.repeat(step, steps, index, plan);
          break;
        case 'bind off':
          this.bindOff(step, plan);
          break;
        case 'marker':
          this.marker(step);
          plan?.push({step, times: 1, uses: 0, makes: 0, inner: null});
          break;
        case 'turn':
          this.turn();
          plan?.push({step, times: 1, uses: 0, makes: 0, inner: null});
          break;
        case 'evenly':
          this.evenly(step, plan);
          break;
        case 'either':
          this.work(step.ways[0], plan);
          break;
        default: {
          const measure = this.measurer.step(step);
          if (!measure) throw new RowTrouble({kind: 'unclear end'}, step.span);
          this.take(constant(measure.uses), constant(measure.makes), step.span);
          const isRun = step.kind === 'cast on';
          plan?.push({
            step,
            times: isRun ? measure.makes : 1,
            uses: measure.uses,
            makes: isRun ? 1 : measure.makes,
            inner: null,
          });
        }
      }
    });
  }

  /** Stitches that a turn at the end leaves: those still on the left needle, or in a round all that were not worked. */
  unworkedOf(total: LinearForm): LinearForm {
    if (!this.endsWithTurn) return none;
    return this.isRound && this.turns === 1 ? minus(total, this.used) : this.needles.right;
  }

  private repeat(
    step: RepeatedStep,
    steps: readonly Step[],
    index: number,
    plan: PlannedStep[] | null,
  ): void {
    const whole = plan ? null : this.measurer.step(step);
    if (whole) {
      this.take(constant(whole.uses), constant(whole.makes), step.span);
      this.noteDouble(step);
      return;
    }
    const body = step.kind === 'work' ? this.bodyOf(step) : this.measurer.passage(step.steps);
    if (!body) {
      if (step.kind !== 'work') this.follow(step, steps, index, plan);
      return;
    }
    const count = this.timesFor(step, body, steps, index);
    this.take(times(count, body.uses), times(count, body.makes), step.span);
    this.noteDouble(step);
    if (!plan) return;
    const inner = step.kind === 'work' ? null : this.planOf(step.steps, body);
    plan.push({step, times: count.fixed, ...body, inner});
  }

  private noteDouble(step: RepeatedStep): void {
    if (step.kind !== 'work' || step.stitch !== doubleStitch) return;
    this.lay('double stitch', this.needles.right);
  }

  private bodyOf(step: Extract<Step, {kind: 'work'}>): Measure {
    const isMoved = step.isDoubtful && this.measurer.readings['yarn forward'] === 'no stitch';
    return isMoved ? {uses: 0, makes: 0} : {uses: step.stitch.uses, makes: step.stitch.makes};
  }

  /** The plan of a passage that is the same each time: worked once on just the stitches that it uses. */
  private planOf(steps: readonly Step[], body: Measure): PlannedStep[] {
    const plan: PlannedStep[] = [];
    const alone = {left: constant(body.uses), right: none, leftMarks: [], rightMarks: []};
    new RowWorker(alone, this.law, this.measurer).work(steps, plan);
    return plan;
  }

  private timesFor(step: RepeatedStep, body: Measure, steps: readonly Step[], index: number): LinearForm {
    const fixed = this.measurer.timesOf(step);
    if (fixed !== null) return constant(fixed);
    const {extent, span} = step;
    const isStar = step.kind === 'repeat' && step.style === 'star';
    const isToEnd = extent.kind === 'as fits' || extent.kind === 'to end';
    if (isToEnd && (isStar || (step.kind === 'repeat' && index < steps.length - 1))) {
      return this.fitting(body, steps, index, span);
    }
    const target = this.leftAt(extent, span);
    const room = minus(this.needles.left, target);
    if (body.uses === 0) throw new RowTrouble({kind: 'endless repeat'}, span);
    return this.divide(room, body, span, isStar);
  }

  /** As often as it goes, leaving what the rest of the row uses. */
  private fitting(body: Measure, steps: readonly Step[], index: number, span: Span): LinearForm {
    if (body.uses === 0) throw new RowTrouble({kind: 'endless repeat'}, span);
    const tail = this.measurer.usesBehind(steps, index);
    const left = minus(this.needles.left, this.leftAtEnd());
    if (tail !== null) return this.divide(minus(left, constant(tail)), body, span, true);
    const rest = steps.slice(index + 1);
    const flexible = rest.findIndex(
      (step) => step.kind === 'work' && step.extent.kind === 'to end' && step.stitch.uses === 1,
    );
    const before = flexible < 0 ? null : this.measurer.passage(rest.slice(0, flexible));
    if (!before) throw new RowTrouble({kind: 'unclear end'}, span);
    const room = minus(left, constant(before.uses));
    if (room.each === 0) return constant(Math.max(0, Math.floor(room.fixed / body.uses)));
    if (room.each % body.uses === 0) {
      return {each: room.each / body.uses, fixed: Math.floor(room.fixed / body.uses)};
    }
    if (body.uses === body.makes) return none;
    throw new RowTrouble({kind: 'unclear end'}, span);
  }

  private divide(room: LinearForm, body: Measure, span: Span, atLeastOnce: boolean): LinearForm {
    const {uses, makes} = body;
    if (this.law.signOf(room) < 0) throw new RowTrouble({kind: 'no repeat', found: room, uses}, span);
    const whole = this.law.divide(room, uses);
    if ('remainder' in whole) {
      // The counts of the row then show it worked as often as it goes.
      const often = room.each === 0 ? Math.floor(room.fixed / uses) : 0;
      this.take(constant(often * uses), constant(often * makes), span);
      throw new RowTrouble({kind: 'repeat not whole', found: room, uses, over: whole.remainder}, span);
    }
    if (atLeastOnce && this.law.signOf(whole) <= 0) {
      throw new RowTrouble({kind: 'no repeat', found: room, uses}, span);
    }
    return whole;
  }

  /** A passage with markers or turns in it, worked time after time. */
  private follow(
    step: Exclude<RepeatedStep, {kind: 'work'}>,
    steps: readonly Step[],
    index: number,
    plan: PlannedStep[] | null,
  ): void {
    const fixed = this.measurer.timesOf(step);
    const target = fixed === null ? this.followedTo(step, steps, index) : none;
    for (let count = 0; fixed === null || count < fixed; count++) {
      if (fixed === null && this.law.signOf(minus(this.needles.left, target)) <= 0) break;
      if (this.visited > mostFollowed) throw new RowTrouble({kind: 'too many'}, step.span);
      const before = this.needles.left;
      const inner: PlannedStep[] = [];
      const [used, made] = [this.used.fixed, this.made.fixed];
      this.work(step.steps, plan && inner);
      plan?.push({step, times: 1, uses: this.used.fixed - used, makes: this.made.fixed - made, inner});
      if (fixed === null && isSame(before, this.needles.left))
        throw new RowTrouble({kind: 'endless repeat'}, step.span);
      if (fixed === null && before.each !== 0) throw new RowTrouble({kind: 'unclear end'}, step.span);
    }
    const over = minus(target, this.needles.left);
    if (fixed === null && this.law.signOf(over) > 0) {
      throw new RowTrouble({kind: 'too few', needed: plus(target, over), found: target}, step.span);
    }
  }

  private followedTo(
    step: Exclude<RepeatedStep, {kind: 'work'}>,
    steps: readonly Step[],
    index: number,
  ): LinearForm {
    const {extent} = step;
    if (extent.kind !== 'as fits' && extent.kind !== 'to end') return this.leftAt(extent, step.span);
    const tail = this.measurer.usesBehind(steps, index);
    if (tail === null) throw new RowTrouble({kind: 'unclear end'}, step.span);
    return plus(this.leftAtEnd(), constant(tail));
  }

  private bindOff(step: BindOffStep, plan: PlannedStep[] | null): void {
    const {extent, span} = step;
    const count =
      extent.kind === 'times' || extent.kind === 'more'
        ? constant(this.measurer.sized(extent.count))
        : minus(this.needles.left, this.leftAt(extent, span));
    const {left, right} = this.needles;
    const isAll = isSame(count, left);
    const isSome = this.law.signOf(minus(left, count)) > 0;
    const keepsLoop = isSome && this.measurer.readings['bind-off loop'] === 'separate';
    const loop = constant(keepsLoop ? 1 : 0);
    this.take(plus(count, loop), loop, span);
    if (!isAll) {
      this.lay('gap', right);
    }
    plan?.push({step, times: count.fixed, uses: 1, makes: 0, inner: null});
    if (keepsLoop) plan?.push({step, times: 1, uses: 1, makes: 1, inner: null});
  }

  private evenly(step: EvenlyStep, plan: PlannedStep[] | null): void {
    const {change, count, span} = step;
    const {left} = this.needles;
    const number = constant(this.measurer.sized(count));
    const made = change === 'increase' ? plus(left, number) : minus(left, number);
    const needed = change === 'decrease' ? times(number, 2) : none;
    if (this.law.signOf(minus(left, needed)) < 0)
      throw new RowTrouble({kind: 'too few', needed, found: left}, span);
    this.take(left, made, span);
    plan?.push({step, times: 1, uses: left.fixed, makes: made.fixed, inner: null});
  }
}
