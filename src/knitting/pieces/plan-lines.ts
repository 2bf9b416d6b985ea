import {plural} from '../../support/plural.ts';
import {countOver} from '../gauge.ts';
import {nearestWholeHalfUp} from '../rounding.ts';
import type {Gauge} from '../units.ts';
import {type CountedStep, type Edge, type EdgePlan, planEdge, rowsOf, takesPart} from './edge-plan.ts';
import type {EdgeStep, PieceStep, PlacedStep} from './piece-syntax.ts';
import {type RunBuilder, settingOf, type Trouble} from './run-builder.ts';

/** More rows than any piece of hand knitting; keeps work on a slip of the pen small. */
export const mostRows = 3000;

/** What planning must know beside the run: how it goes, and how many rows lie below its panel. */
export interface Conditions {
  readonly isRound: boolean;
  readonly rowsBefore: number;
  readonly rowGauge: Gauge<'rows'> | null;
}

export interface PlannedLines {
  readonly left: EdgePlan;
  readonly right: EdgePlan;
}

/** What cannot be planned, and at which line. */
export interface Unplanned {
  readonly line: PlacedStep;
  readonly trouble: Trouble;
}

/** Both edges of one line, or of lines worked at the same time, row by row. An edge that no line names goes on even. */
export function planLines(
  lines: readonly PlacedStep[],
  run: RunBuilder,
  conditions: Conditions,
): PlannedLines | Unplanned {
  const edges: {left: EdgePlan | null; right: EdgePlan | null} = {left: null, right: null};
  let rows = 0;
  for (const line of lines) {
    const {step} = line;
    const where = step.kind === 'along' ? step.where : 'each edge';
    const counted: CountedStep[] = [];
    for (const one of step.kind === 'along' ? step.steps : [step]) {
      const result = countStep(one, run, conditions, counted);
      if ('message' in result) return {line, trouble: result};
      counted.push(result);
    }
    if (run.inner === null && (where === 'neck' || counted.some(isAtNeck))) return {line, trouble: noNeck};
    for (const edge of ['left', 'right'] as const) {
      if (takesPart(where, edge, run.inner)) edges[edge] = chain(counted, edge, run, conditions.isRound);
    }
    rows = Math.max(rows, lengthOfAll(counted));
  }
  const even = chain([{kind: 'work', rows, measuring: null}], 'left', run, conditions.isRound);
  const {left, right} = {left: edges.left ?? even, right: edges.right ?? even};
  const [line] = lines;
  const isTooLong = run.row + conditions.rowsBefore + rows > mostRows;
  if (line && isTooLong) return {line, trouble: tooManyRows};
  return line && left.work.length !== right.work.length
    ? {line, trouble: unequalEdges(run, left, right)}
    : {left, right};
}

/** A step with its length in rows, or why it cannot be worked. `before` stands in front of it on the same line. */
function countStep(
  step: PieceStep | EdgeStep,
  run: RunBuilder,
  {isRound, rowsBefore, rowGauge}: Conditions,
  before: readonly CountedStep[],
): CountedStep | Trouble {
  switch (step.kind) {
    case 'work':
    case 'shape':
      return step;
    case 'bind off at beginnings':
    case 'bind off at edge':
    case 'steps':
      return isRound ? noEdge : step;
    case 'work length': {
      if (!rowGauge) return noGauge;
      const exact = countOver(rowGauge, step.length.millimetres);
      const wanted = exact.toNumber() > mostRows ? mostRows + 1 : nearestWholeHalfUp(exact);
      const done = step.isTotal ? rowsBefore + run.row + lengthOfAll(before) : 0;
      return wanted < done
        ? workedAlready(step.length.text, wanted, done)
        : {kind: 'work', rows: wanted - done, measuring: null};
    }
    default:
      return {message: 'this cannot be worked along an edge', hint: 'Write it on a line of its own.'};
  }
}

/** Steps of one edge, one after the other. */
function chain(steps: readonly CountedStep[], edge: Edge, run: RunBuilder, isRound: boolean): EdgePlan {
  const setting = settingOf(run, isRound);
  const work: EdgePlan['work'][number][] = [];
  const corners: EdgePlan['corners'][number][] = [];
  let inward = 0;
  for (const step of steps) {
    const row = work.length;
    const plan = planEdge(step, edge, {...setting, firstRow: setting.firstRow + row});
    work.push(...plan.work);
    for (const corner of plan.corners) corners.push({row: corner.row + row, inward: corner.inward + inward});
    inward += plan.corners.at(-1)?.inward ?? 0;
  }
  return {work, corners};
}

function lengthOfAll(steps: readonly CountedStep[]): number {
  return steps.reduce((sum, step) => sum + rowsOf(step), 0);
}

function isAtNeck(step: CountedStep): boolean {
  return 'where' in step && step.where === 'neck';
}

function unequalEdges({inner}: RunBuilder, left: EdgePlan, right: EdgePlan): Trouble {
  const [one, other] = inner === 'left' ? [right, left] : [left, right];
  const [first, second] = inner === null ? ['left', 'right'] : ['side', 'neck'];
  const [ones, others] = [one.work.length, other.work.length];
  return {
    message: `the ${first} edge takes \`${plural(ones, 'row')}\` and the ${second} edge \`${plural(others, 'row')}\``,
    hint: `Add \`work ${plural(Math.abs(ones - others), 'row')}\` at the ${ones < others ? first : second} edge.`,
  };
}

function workedAlready(length: string, wanted: number, done: number): Trouble {
  return {
    message: `\`${length}\` are \`${plural(wanted, 'row')}\`, and \`${done}\` are worked already`,
    hint: 'Write a greater length, or `work` and how much more.',
  };
}

const noNeck: Trouble = {
  message: 'no edge faces a neck here',
  hint: 'Divide the stitches first, such as `divide: 56 left, 2 on a holder, 56 right`, or write `each edge`.',
};

const noEdge: Trouble = {
  message: 'a round has no edge to bind off at',
  hint: 'Write `back and forth` above it once the work is no longer joined.',
};

const noGauge: Trouble = {
  message: 'the gauge is not said',
  hint: 'Write a line such as `gauge: 22 sts and 30 rows over 10 cm`.',
};

const tooManyRows: Trouble = {
  message: `the piece would have more than \`${mostRows}\` rows`,
  hint: 'Check the numbers of rows.',
};
