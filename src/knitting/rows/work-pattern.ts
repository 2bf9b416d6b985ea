import type {Problem, Span} from '../../support/result.ts';
import {checkRow, checkStated} from './check-row.ts';
import {otherSide, type Side} from './face.ts';
import type {Law} from './law.ts';
import {constant, isSame, type LinearForm, minus, plus, showForm} from './linear-form.ts';
import {Measurer} from './measure.ts';
import {castOn, isSameNeedles, type Needles, rounded, totalOf, turned} from './needle.ts';
import type {PlannedStep} from './planned-step.ts';
import type {SettledReadings} from './readings.ts';
import {type OrderedRow, type RowLoop, type RowTurn, sizedFor} from './row-order.ts';
import type {StatedCount, WrittenRow} from './row-syntax.ts';
import {RowTrouble} from './row-trouble.ts';
import {labelOf, neverReached} from './row-words.ts';
import {describeTrouble} from './trouble-words.ts';
import {RowWorker} from './work-row.ts';

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

interface Setting {
  readonly law: Law;
  readonly size: number;
  readonly readings: SettledReadings;
  readonly isPlanned: boolean;
}

/** As many row workings as one proof follows; longer repeats that keep changing their count are reported. */
const mostWorkings = 10_000;

/** Works all rows, one after the other, from `start` stitches. `OnlyWhen` of the law passes through. */
export function workPattern(rows: readonly OrderedRow[], start: LinearForm, setting: Setting): WorkedPattern {
  const worker = new PatternWorker(setting, castOn(start));
  worker.workAll(rows);
  return worker;
}

class PatternWorker implements WorkedPattern {
  readonly rows: WorkedRow[] = [];
  readonly problems: Problem[] = [];
  visited = 0;
  private needles: Needles;
  private side: Side | null = null;
  private readonly setting: Setting;
  private readonly measurer: Measurer;
  private readonly firstIn = new Map<RowTurn, LinearForm>();
  /** Rows worked before: what they state is of the first time. */
  private readonly checked = new Set<WrittenRow>();
  /** Rows that were told not to come out, with the change of the count that was taken for the one meant. */
  private readonly assumed = new Map<WrittenRow, LinearForm>();
  /** A row that could not be read or did not come out may have set markers: one that is not found is no second mistake. */
  private isMarkerInDoubt = false;
  /** The row before could not be read and turns somewhere: where the next begins is not known. */
  private isTurnInDoubt = false;
  private workings = 0;
  private isTrial = false;
  private trials = mostTrials;

  constructor(setting: Setting, needles: Needles) {
    this.setting = setting;
    this.needles = needles;
    this.measurer = new Measurer(setting.size, setting.readings);
  }

  workAll(rows: readonly OrderedRow[]): void {
    rows.forEach((row, index) => {
      if (row.kind === 'loop') this.loopAndCheck(row);
      else if (!this.workRow(row)) this.recover(row, rows.slice(index + 1));
    });
  }

  /** False when the row does not come out; the needles are then as near as can be told. */
  private workRow(turn: RowTurn): boolean {
    const {row} = turn;
    const before = this.needles;
    const total = totalOf(before);
    if (!this.firstIn.has(turn)) this.firstIn.set(turn, total);
    const side = this.takeSide(turn);
    const worker = new RowWorker(before, this.setting.law, this.measurer);
    const plan: PlannedStep[] | null = this.setting.isPlanned ? [] : null;
    let trouble: Problem | null = null;
    let isExcused = false;
    try {
      worker.work(row.steps, plan);
      const {left} = worker.needles;
      if (!worker.endsWithTurn && !isSame(left, constant(0))) {
        throw new RowTrouble({kind: 'left over', left}, endOf(turn));
      }
    } catch (error) {
      if (!(error instanceof RowTrouble)) throw error;
      trouble = describeTrouble(error, labelOf(turn), worker);
      isExcused =
        this.assumed.has(row) || this.isTurnInDoubt || (this.isMarkerInDoubt && isAboutMarkers(error));
    }
    this.visited += worker.visited;
    this.workings += 1;
    this.needles = this.endRow(turn, worker);
    if (worker.turns % 2 === (worker.endsWithTurn ? 0 : 1) && this.side) this.side = otherSide(this.side);
    const out = totalOf(this.needles);
    const found = this.problems.length;
    if (row.isWholeRead && !isExcused) {
      if (trouble) this.problems.push(trouble);
      else
        this.problems.push(
          ...checkRow(row, labelOf(turn), total, out, this.setting.size, this.checked.has(row)),
        );
    }
    const isFaulty = trouble !== null || !row.isWholeRead || this.problems.length > found;
    this.checked.add(row);
    this.rows.push({
      turn,
      label: labelOf(turn),
      side,
      in: total,
      used: worker.used,
      made: worker.made,
      out,
      unworked: worker.endsWithTurn ? worker.needles.right : constant(0),
      times: 1,
      isSound: trouble === null,
      plan,
    });
    if (isFaulty) this.isMarkerInDoubt = true;
    this.isTurnInDoubt = !row.isWholeRead && row.steps.some(({kind}) => kind === 'turn');
    const change = this.assumed.get(row);
    if (isFaulty && change) this.needles = withTotal(this.needles, plus(total, change));
    return !isFaulty || change !== undefined;
  }

  private endRow(turn: RowTurn, worker: RowWorker): Needles {
    if (worker.endsWithTurn) return worker.needles;
    if (turn.isRound && worker.turns % 2 === 0) return rounded(worker.needles);
    const {needles} = worker;
    const all = {...needles, left: constant(0), right: totalOf(needles)};
    return turned(all);
  }

  /** The side that the row is worked on, and a problem when its label says otherwise. */
  private takeSide({row, number, isRound}: RowTurn): Side {
    const {label} = row;
    const expected = this.side;
    const stated = label.every === 'RS' || label.every === 'WS' ? null : label.side;
    let side = expected ?? stated ?? (isRound || (number ?? 1) % 2 === 1 ? 'RS' : 'WS');
    if (expected && stated && stated !== expected && label.ranges.every(({first, last}) => first === last)) {
      this.problems.push({
        message: `\`${label.text}\` is worked on the ${expected}, not the ${stated}`,
        hint: isRound
          ? 'In the round every row is a right-side row, unless the work was turned.'
          : 'Right-side and wrong-side rows alternate; check the label and that no row is missing before it.',
        span: label.sideSpan ?? label.span,
      });
      side = stated;
    }
    this.side = isRound ? side : otherSide(side);
    return side;
  }

  private loopAndCheck(loop: RowLoop): void {
    const before = this.problems.length;
    const start = totalOf(this.needles);
    this.loop(loop);
    if (!loop.stated || this.problems.length > before) return;
    const end = totalOf(this.needles);
    this.problems.push(...checkStated(loop.stated, 'the repeat of the rows', start, end, this.setting.size));
  }

  private loop(loop: RowLoop): void {
    const {often, turns, span} = loop;
    if (often.kind === 'open' || often.kind === 'to fill the label') {
      this.checkReturn(loop);
      if (!turns.some(({isRound}) => isRound)) this.side = null;
      return;
    }
    const sought = sizedFor(often.count, this.setting.size);
    for (let count = 1; ; count++) {
      if (often.kind === 'more' && count > sought) return;
      if (often.kind === 'until stitches' && isSame(totalOf(this.needles), constant(sought))) return;
      const before = this.needles;
      const first = this.rows.length;
      for (const turn of turns) if (!this.workRow(turn)) return;
      const isSteady = isSameNeedles(before, this.needles);
      if (isSteady && often.kind === 'more') {
        const times = sought - count + 1;
        for (let index = first; index < this.rows.length; index++) {
          const row = this.rows[index];
          if (row) this.rows[index] = {...row, times};
        }
        return;
      }
      if (isSteady || this.workings > mostWorkings || this.isPast(sought, before)) {
        this.problems.push(neverReached(loop, sought, span));
        return;
      }
    }
  }

  private isPast(sought: number, before: Needles): boolean {
    const {law} = this.setting;
    const goal = constant(sought);
    const was = law.signOf(minus(totalOf(before), goal));
    return (
      was !== 0 &&
      was !== law.signOf(minus(totalOf(this.needles), goal)) &&
      law.signOf(minus(totalOf(this.needles), goal)) !== 0
    );
  }

  /** Repeated for as long as one likes: the first row must find again what it found before. */
  private checkReturn({turns, often, span}: RowLoop): void {
    const first = turns[0];
    const start = first && this.firstIn.get(first);
    const now = totalOf(this.needles);
    if (!first || !start || isSame(start, now)) return;
    const isForPattern = often.kind === 'open' && often.isForPattern;
    if (!isForPattern && this.canBeWorkedAgain(turns)) return;
    this.problems.push({
      message: `\`${labelOf(first)}\` first finds ${showForm(start)} stitches and, after the rows to be repeated, ${showForm(now)}`,
      hint: 'Rows that are repeated for the pattern must end with the count they began with; check the increases and decreases, or say how often they are repeated.',
      span,
    });
  }

  private canBeWorkedAgain(turns: readonly RowTurn[]): boolean {
    return this.troublesOf(turns, this.needles) === 0;
  }

  /**
   * After a row that does not come out the count is in doubt, and one mistake must not be told again in every row that
   * follows: of the counts that may have been meant, the first that serves the next rows best is taken.
   */
  private recover(failed: RowTurn, rest: readonly OrderedRow[]): void {
    const row = this.rows.at(-1);
    if (this.isTrial || !row || rest.length === 0) return;
    const next = rest.slice(0, trialRows);
    let best = row.out;
    let fewest = Number.POSITIVE_INFINITY;
    for (const count of this.candidates(failed, row)) {
      if (this.trials <= 0) break;
      const troubles = this.troublesOf(
        next,
        withTotal(this.needles, count),
        new Map(this.assumed).set(failed.row, minus(count, row.in)),
      );
      if (troubles < fewest) [best, fewest] = [count, troubles];
      if (fewest === 0) break;
    }
    if (!isSame(best, row.out)) this.needles = withTotal(this.needles, best);
    this.assumed.set(failed.row, minus(best, row.in));
  }

  /** The count that is stated, the one that came out, the one before, then all others, the nearest first. */
  private *candidates({row}: RowTurn, {out, in: before}: WorkedRow): Generator<LinearForm> {
    yield* row.stated.filter(({kind}) => kind === 'total').map(this.statedTotal);
    yield out;
    yield before;
    if (out.each !== 0 || before.each !== 0) return;
    for (let distance = 1; distance <= Math.max(before.fixed, 12); distance++) {
      yield constant(before.fixed + distance);
      if (distance < before.fixed) yield constant(before.fixed - distance);
    }
  }

  private readonly statedTotal = ({count}: StatedCount): LinearForm =>
    constant(sizedFor(count, this.setting.size));

  private troublesOf(
    rows: readonly OrderedRow[],
    needles: Needles,
    assumed: ReadonlyMap<WrittenRow, LinearForm> = this.assumed,
  ): number {
    const trial = new PatternWorker({...this.setting, isPlanned: false}, needles);
    trial.isTrial = true;
    for (const [row, change] of assumed) trial.assumed.set(row, change);
    trial.isMarkerInDoubt = this.isMarkerInDoubt;
    trial.isTurnInDoubt = this.isTurnInDoubt;
    trial.side = this.side;
    trial.workAll(rows);
    this.trials -= trial.workings + trial.visited;
    this.visited += trial.visited;
    return trial.problems.length;
  }
}

/** So many rows behind a faulty one are looked at to tell which count was meant, and so many rows and
 * steps in all. */
const trialRows = 12;
const mostTrials = 10_000;

/** As many stitches as that before the next row; the markers stay where they are from the far end. */
function withTotal(needles: Needles, total: LinearForm): Needles {
  const {left, leftMarks} = needles;
  return isSame(totalOf(needles), total) && isSame(left, total)
    ? needles
    : {left: total, right: constant(0), leftMarks, rightMarks: []};
}

function isAboutMarkers({trouble}: RowTrouble): boolean {
  return ['no landmark', 'no marker here', 'too close'].includes(trouble.kind);
}

function endOf({row}: RowTurn): Span {
  return row.steps.at(-1)?.span ?? row.span;
}
