import {plural} from '../../support/plural.ts';
import type {Problem} from '../../support/result.ts';
import type {Lean} from './face.ts';
import {constant, isSame, type LinearForm, minus} from './linear-form.ts';
import {sizedFor} from './row-order.ts';
import type {Extent, StatedCount, Step, WrittenRow} from './row-syntax.ts';

/**
 * Whether a row that comes out does what its text says: stated counts, `inc row`, paired shaping. A row that is worked
 * again states only how the count changes.
 */
export function checkRow(
  row: WrittenRow,
  label: string,
  before: LinearForm,
  after: LinearForm,
  size: number,
  isAgain: boolean,
): Problem[] {
  const problems = row.stated
    .filter(({kind}) => !isAgain || kind !== 'total')
    .flatMap((stated) => checkStated(stated, label, before, after, size));
  const {says, isPaired, span} = row.label;
  const change = minus(after, before);
  if (says && change.each === 0 && (says === 'increase' ? change.fixed <= 0 : change.fixed >= 0)) {
    const done =
      change.fixed === 0
        ? 'keeps its count'
        : `${change.fixed > 0 ? 'gains' : 'loses'} ${plural(Math.abs(change.fixed), 'stitch', 'stitches')}`;
    problems.push({
      message: `\`${label}\` is called ${says === 'increase' ? 'an increase' : 'a decrease'} row and ${done}`,
      hint: 'Check the increases and decreases of the row, or its label.',
      span,
    });
  }
  if (isPaired) problems.push(...checkPairs(row, label));
  return problems;
}

export function checkStated(
  stated: StatedCount,
  label: string,
  before: LinearForm,
  after: LinearForm,
  size: number,
): Problem[] {
  const said = sizedFor(stated.count, size);
  const change = minus(after, before);
  const found =
    stated.kind === 'total' ? after : stated.kind === 'increase' ? change : minus(constant(0), change);
  if (found.each !== 0 || isSame(found, constant(said))) return [];
  const difference = Math.abs(found.fixed - said);
  const what =
    stated.kind === 'total'
      ? `makes ${plural(found.fixed, 'stitch', 'stitches')}`
      : `changes the count by ${change.fixed}`;
  return [
    {
      message: `\`${label}\` ${what}, ${plural(difference, 'stitch', 'stitches')} ${found.fixed < said ? 'short of' : 'more than'} the \`${said}\` it states`,
      hint: 'Check the increases and decreases of the row, or the number that is stated.',
      span: stated.span,
    },
  ];
}

function checkPairs(row: WrittenRow, label: string): Problem[] {
  const left = countLeaning(row.steps, 'left');
  const right = countLeaning(row.steps, 'right');
  if (left === right) return [];
  return [
    {
      message: `\`${label}\` says it is paired and leans ${left} times to the left, ${right} times to the right`,
      hint: 'Give each leaning increase or decrease a partner that leans the other way.',
      span: row.label.span,
    },
  ];
}

/** Leaning increases and decreases, where it is written how often; a passage worked as often as fits counts once. */
function countLeaning(steps: readonly Step[], lean: Lean): number {
  return steps.reduce((sum, step) => {
    if (step.kind === 'repeat' || step.kind === 'again')
      return sum + countLeaning(step.steps, lean) * timesOf(step.extent);
    if (step.kind !== 'work' || step.stitch.lean !== lean || step.stitch.kind === 'crossing') return sum;
    return sum + timesOf(step.extent);
  }, 0);
}

function timesOf(extent: Extent): number {
  return extent.kind === 'times' ? (extent.count.values[0] ?? 1) : 1;
}
