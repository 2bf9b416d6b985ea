import type {Problem, Span} from '../../support/result.ts';
import type {Side} from './face.ts';
import type {NumberRange, RowRepeat, Sized, StatedCount, WrittenPattern, WrittenRow} from './row-syntax.ts';

/** One working of a row. */
export interface RowTurn {
  readonly kind: 'row';
  readonly row: WrittenRow;
  /** Null for `Next row` and its like. */
  readonly number: number | null;
  readonly isRound: boolean;
}

/** Rows worked again. */
export interface RowLoop {
  readonly kind: 'loop';
  readonly turns: readonly RowTurn[];
  readonly often: RowRepeat['often'];
  readonly stated: StatedCount | null;
  readonly span: Span;
}

export type OrderedRow = RowTurn | RowLoop;

/** More rows than any pattern numbers; a larger number, or more of them in all, is reported. */
const mostRows = 5_000;

/** A label that runs ahead by more rows is a slip, and `all WS rows` is not asked for the rows between. */
const widestGap = 1_000;

/** The rows in the order in which they are worked, with the gaps in their numbers reported. */
export function orderRows(pattern: WrittenPattern): {rows: OrderedRow[]; problems: Problem[]} {
  const problems: Problem[] = [];
  const rows: OrderedRow[] = [];
  const budget = {left: mostRows};
  let section = new Section(pattern.header.isRound, problems, budget);
  for (const entry of pattern.entries) {
    if (entry.kind === 'row' && section.startsAnew(entry)) {
      for (const row of section.inOrder()) rows.push(row);
      section = new Section(pattern.header.isRound, problems, budget);
    }
    if (entry.kind === 'row') section.addRow(entry);
    else section.addRepeat(entry);
  }
  for (const row of section.inOrder()) rows.push(row);
  return {rows, problems};
}

interface Keyed {
  readonly key: number;
  readonly item: OrderedRow;
}

/** Rows whose numbers run on; a pattern begins a new section where it counts from 1 again. */
class Section {
  private readonly numbered = new Map<number, RowTurn>();
  private readonly others: Keyed[] = [];
  /** The rows among the others. */
  private readonly loose: {readonly key: number; readonly item: RowTurn}[] = [];
  private readonly fillers: WrittenRow[] = [];
  private readonly isRound: boolean;
  private readonly problems: Problem[];
  /** How many more rows labels may number. */
  private readonly budget: {left: number};
  private lastKey = 0;

  constructor(isRound: boolean, problems: Problem[], budget: {left: number}) {
    this.isRound = isRound;
    this.problems = problems;
    this.budget = budget;
  }

  startsAnew({label}: WrittenRow): boolean {
    return label.ranges.some(({first}) => this.numbered.has(first));
  }

  addRow(row: WrittenRow): void {
    const {label} = row;
    const isRound = this.isRound || label.isRound;
    if (label.every !== null) this.fillers.push(row);
    for (const number of this.numbersOf(label.ranges, label.span)) {
      this.numbered.set(number, {kind: 'row', row, number, isRound});
      this.lastKey = Math.max(this.lastKey, number);
    }
    if (label.ranges.length > 0) return;
    if (label.every === null) {
      this.lastKey += 1 / 1024;
      this.addLoose({kind: 'row', row, number: null, isRound});
    } else if (label.every === 'row' && this.numbered.size === 0) {
      this.numbered.set(1, {kind: 'row', row, number: 1, isRound});
      this.lastKey = 1;
      this.fillers.pop();
    }
  }

  addRepeat(repeat: RowRepeat): void {
    const turns = this.turnsOf(repeat);
    if (turns.length === 0) {
      this.problems.push({
        message: 'the rows to repeat are not written before this',
        hint: 'Name rows that stand above, such as `Rep rows 1 and 2`.',
        span: repeat.span,
      });
      return;
    }
    if (repeat.label && (repeat.label.ranges.length > 0 || repeat.often.kind === 'to fill the label')) {
      this.fill(repeat, turns);
    } else {
      this.lastKey += 1 / 1024;
      const {often, stated, span} = repeat;
      this.others.push({key: this.lastKey, item: {kind: 'loop', turns, often, stated, span}});
    }
  }

  inOrder(): OrderedRow[] {
    this.fillGaps();
    const keyed: Keyed[] = [...this.numbered].map(([key, item]) => ({key, item}));
    const sorted = [...keyed, ...this.others].sort((a, b) => a.key - b.key).map(({item}) => item);
    this.reportGaps();
    return sorted;
  }

  private turnsOf({what}: RowRepeat): RowTurn[] {
    if (what.kind === 'rows') return this.pick(this.numbersOf(what.ranges, null));
    if (what.kind === 'last') return this.lastTurns(what.count);
    const done = this.soFar();
    if (what.kind === 'all') return done;
    return done.filter(({number}) => number !== null && number >= what.first);
  }

  /** `Row 2 and all WS rows` counts among the rows to repeat before the gaps are filled for good. */
  private pick(numbers: readonly number[]): RowTurn[] {
    return numbers.flatMap((number) => this.numbered.get(number) ?? this.fillerFor(number) ?? []);
  }

  private addLoose(item: RowTurn): void {
    this.others.push({key: this.lastKey, item});
    this.loose.push({key: this.lastKey, item});
  }

  private soFar(): RowTurn[] {
    const numbers = Array.from({length: Math.floor(this.lastKey)}, (_, index) => index + 1);
    const keyed = this.pick(numbers).map((item) => ({key: item.number ?? 0, item}));
    return [...keyed, ...this.loose].sort((a, b) => a.key - b.key).map(({item}) => item);
  }

  /** Without going over all that is done. */
  private lastTurns(count: number): RowTurn[] {
    const keyed: {readonly key: number; readonly item: RowTurn}[] = count > 0 ? this.loose.slice(-count) : [];
    let numbered = 0;
    for (let key = Math.floor(this.lastKey); key > 0 && numbered < count; key--) {
      const [item] = this.pick([key]);
      if (!item) continue;
      keyed.push({key, item});
      numbered += 1;
    }
    const sorted = keyed.sort((a, b) => a.key - b.key).map(({item}) => item);
    return count > 0 ? sorted.slice(-count) : [];
  }

  /** `Rows 3–14: rep rows 1 and 2`. */
  private fill(repeat: RowRepeat, turns: readonly RowTurn[]): void {
    const numbers = this.numbersOf(repeat.label?.ranges ?? [], repeat.span);
    if (numbers.length === 0) {
      for (const turn of turns) {
        this.lastKey += 1 / 1024;
        this.addLoose({...turn, number: null});
      }
      return;
    }
    if (numbers.length % turns.length !== 0) {
      this.problems.push({
        message: `\`${repeat.label?.text ?? ''}\` is ${numbers.length} rows, which repeats of ${turns.length} rows do not fill`,
        hint: 'Change the last row number so that the repeats come out whole.',
        span: repeat.label?.span ?? repeat.span,
      });
    }
    numbers.forEach((number, index) => {
      const turn = turns[index % turns.length];
      if (turn) this.numbered.set(number, {...turn, number});
    });
    this.lastKey = Math.max(this.lastKey, ...numbers.slice(-1));
  }

  private fillGaps(): void {
    const numbers = [...this.numbered.keys()];
    if (this.fillers.length === 0 || numbers.length === 0) return;
    numbers.sort((a, b) => a - b);
    // `All RS rows: Knit. Row 2: …` begins with row 1.
    const first = numbers[0] === 2 ? this.fillerFor(1) : null;
    if (first && first.row.label.ranges.length === 0) this.numbered.set(1, first);
    for (const [index, before] of numbers.entries()) {
      const next = numbers[index + 1];
      if (next !== undefined && next - before > widestGap) continue;
      for (let number = before + 1; number < (next ?? before + 2); number++) {
        const turn = this.fillerFor(number);
        if (turn && (next !== undefined || turn.row.label.every !== 'row')) this.numbered.set(number, turn);
      }
    }
  }

  private fillerFor(number: number): RowTurn | null {
    const row = this.fillers.find((filler) => isFilledBy(filler, number, this.sideOfOdd()));
    return row ? {kind: 'row', row, number, isRound: this.isRound || row.label.isRound} : null;
  }

  /** The side that the odd rows are worked on: as some label says, else RS. */
  private sideOfOdd(): Side {
    for (const {row, number} of this.numbered.values()) {
      const {side, every, ranges} = row.label;
      if (side === null || number === null || every !== null || ranges.length !== 1) continue;
      return (number % 2 === 1) === (side === 'RS') ? 'RS' : 'WS';
    }
    return 'RS';
  }

  private numbersOf(ranges: readonly NumberRange[], span: Span | null): number[] {
    const numbers: number[] = [];
    for (const {first, last} of ranges) {
      const most = span ? this.budget.left : mostRows - numbers.length;
      if ((first > mostRows || last - first >= most) && span) {
        this.problems.push({
          message: `the row numbers run to \`${last}\``,
          hint: `Number at most ${mostRows} rows in one pattern.`,
          span,
        });
      }
      if (first > mostRows) continue;
      const end = Math.min(last, first + most - 1);
      for (let number = first; number <= end; number++) numbers.push(number);
      if (span) this.budget.left -= Math.max(0, end - first + 1);
    }
    return numbers;
  }

  private reportGaps(): void {
    const numbers = [...this.numbered.keys()].sort((a, b) => a - b);
    for (const [index, number] of numbers.entries()) {
      const before = numbers[index - 1];
      if (before === undefined || number === before + 1) continue;
      const hasLoop = this.others.some(({key}) => key > before && key < number);
      const row = this.numbered.get(number)?.row;
      if (hasLoop || !row) continue;
      const missing = number - before === 2 ? `row ${before + 1}` : `rows ${before + 1}–${number - 1}`;
      this.problems.push({
        message: `\`${row.label.text}\` follows row ${before}: ${missing} ${number - before === 2 ? 'is' : 'are'} not written`,
        hint: 'Write what is worked there, or number the rows without a gap.',
        span: row.label.span,
      });
    }
  }
}

function isFilledBy({label}: WrittenRow, number: number, sideOfOdd: Side): boolean {
  const own = label.ranges[0];
  switch (label.every) {
    case 'row':
      return own === undefined || number > own.first;
    case 'odd':
      return number % 2 === 1;
    case 'even':
      return number % 2 === 0;
    case 'alternate':
      return own === undefined ? number % 2 === 0 : number > own.first && (number - own.first) % 2 === 0;
    case 'RS':
    case 'WS':
      return own === undefined
        ? (number % 2 === 1 ? sideOfOdd : sideOfOdd === 'RS' ? 'WS' : 'RS') === label.every
        : (number - own.first) % 2 === 0;
    case null:
      return false;
  }
}

/** The number for one size. */
export function sizedFor(count: Sized, size: number): number {
  return count.values[Math.min(size, count.values.length - 1)] ?? 0;
}
