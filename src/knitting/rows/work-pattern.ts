import type {Problem} from '../../support/result.ts';
import {checkRow, checkStated} from './check-row.ts';
import {otherSide, type Side} from './face.ts';
import type {Law} from './law.ts';
import {likelyCounts} from './likely-counts.ts';
import {constant, isSame, type LinearForm, minus, plus} from './linear-form.ts';
import {Measurer} from './measure.ts';
import {castOn, isSameNeedles, type Needles, totalOf, turned, withTotal} from './needle.ts';
import type {PlannedStep} from './planned-step.ts';
import type {SettledReadings} from './readings.ts';
import {nextRound} from './round-needle.ts';
import {type OrderedRow, type RowLoop, type RowTurn, sizedFor} from './row-order.ts';
import type {WrittenRow} from './row-syntax.ts';
import {isAboutMarkers, RowTrouble} from './row-trouble.ts';
import {endOf, labelOf, neverReached, notReturned, wrongSide} from './row-words.ts';
import {describeTrouble} from './trouble-words.ts';
import {RowWorker} from './work-row.ts';
import type {WorkedPattern, WorkedRow} from './worked-row.ts';

interface Setting {
  readonly law: Law;
  readonly size: number;
  readonly readings: SettledReadings;
  readonly isPlanned: boolean;
  /** Only whether all rows come out is asked: nothing is worked behind the first that does not. */
  readonly stopsEarly?: boolean;
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
  /** The last row was a round and ended with a turn. */
  private isTurnedRound = false;
  /** The work goes against the direction of the round. */
  private isBackward = false;
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
      if (this.setting.stopsEarly && this.problems.length > 0) return;
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
    const isRound = turn.isRound || this.isTurnedRound;
    const worker = new RowWorker(before, this.setting.law, this.measurer, {
      isRound,
      isTurned: this.isTurnedRound,
    });
    const plan: PlannedStep[] | null = this.setting.isPlanned ? [] : null;
    let trouble: Problem | null = null;
    let isExcused = false;
    try {
      worker.work(row.steps, plan);
      this.finishRow(turn, worker);
    } catch (error) {
      if (!(error instanceof RowTrouble)) throw error;
      trouble = describeTrouble(error, labelOf(turn), worker);
      isExcused =
        this.assumed.has(row) || this.isTurnInDoubt || (this.isMarkerInDoubt && isAboutMarkers(error));
    }
    this.visited += worker.visited;
    this.workings += 1;
    this.endRow(side, isRound, worker);
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
      unworked: worker.unworkedOf(total),
      times: 1,
      isSound: trouble === null,
      plan,
    });
    if (isFaulty) this.isMarkerInDoubt = true;
    this.isTurnInDoubt = !row.isWholeRead && row.steps.some(({kind}) => kind === 'turn');
    const change = this.assumed.get(row);
    if (isFaulty && change) this.goOnFrom(plus(total, change));
    return !isFaulty || change !== undefined;
  }

  /** A short row that goes back may end past the beginning of its round, where it is turned without a word. */
  private finishRow(turn: RowTurn, worker: RowWorker): void {
    if (worker.endsWithTurn) return;
    const {leftToEnd: left, pastEnd: past} = worker;
    const isPast = !isSame(past, constant(0));
    if (isPast && this.isBackward !== (worker.turns % 2 === 1)) {
      worker.turn();
      worker.endsWithTurn = true;
    } else if (isPast) {
      throw new RowTrouble({kind: 'too few', needed: past, found: constant(0)}, endOf(turn));
    } else if (!isSame(left, constant(0))) {
      throw new RowTrouble({kind: 'left over', left}, endOf(turn));
    }
  }

  /** Puts needles and side as the next row finds them. A flat row is turned at its end, a round only when it went back. */
  private endRow(side: Side, isRound: boolean, worker: RowWorker): void {
    const {needles, turns, endsWithTurn} = worker;
    const isBackward = this.isBackward !== (turns % 2 === 1);
    const isTurnedAtEnd = !endsWithTurn && (!isRound || isBackward);
    this.side = (turns + (isTurnedAtEnd ? 1 : 0)) % 2 === 1 ? otherSide(side) : side;
    this.isTurnedRound = isRound && endsWithTurn;
    this.isBackward = this.isTurnedRound && isBackward;
    if (endsWithTurn) this.needles = needles;
    else if (isRound) this.needles = nextRound(needles, isBackward, this.setting.law);
    else this.needles = turned({...needles, left: constant(0), right: totalOf(needles)});
  }

  /** The side that the row is worked on, and a problem when its label says otherwise. */
  private takeSide({row, number, isRound}: RowTurn): Side {
    const {label} = row;
    const expected = this.side;
    const stated = label.every === 'RS' || label.every === 'WS' ? null : label.side;
    let side = expected ?? stated ?? (isRound || (number ?? 1) % 2 === 1 ? 'RS' : 'WS');
    if (expected && stated && stated !== expected && label.ranges.every(({first, last}) => first === last)) {
      this.problems.push(wrongSide(label, expected, isRound));
      side = stated;
    }
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
    this.problems.push(notReturned(first, start, now, span));
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
    if (this.isTrial || this.setting.stopsEarly || !row || rest.length === 0) return;
    const next = rest.slice(0, trialRows);
    let best = row.out;
    let fewest = Number.POSITIVE_INFINITY;
    for (const count of likelyCounts(failed.row, row, this.setting.size)) {
      if (this.trials <= 0) break;
      const troubles = this.troublesOf(
        next,
        withTotal(this.needles, count),
        new Map(this.assumed).set(failed.row, minus(count, row.in)),
      );
      if (troubles < fewest) [best, fewest] = [count, troubles];
      if (fewest === 0) break;
    }
    if (!isSame(best, row.out)) this.goOnFrom(best);
    this.assumed.set(failed.row, minus(best, row.in));
  }

  private goOnFrom(total: LinearForm): void {
    this.needles = withTotal(this.needles, total);
    this.isTurnedRound = false;
    this.isBackward = false;
  }

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
    if (needles === this.needles) {
      trial.isTurnedRound = this.isTurnedRound;
      trial.isBackward = this.isBackward;
    }
    trial.workAll(rows);
    this.trials -= trial.workings + trial.visited;
    this.visited += trial.visited;
    return trial.problems.length;
  }
}

/** So many rows behind a faulty one are looked at to tell which count was meant, and so many rows and steps in all. */
const trialRows = 12;
const mostTrials = 10_000;
