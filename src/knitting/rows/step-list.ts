import type {EdgeWork} from './at-edges.ts';
import type {Extent, RepeatStep, Step} from './row-syntax.ts';

/** A mark set by `*`, `**`, `(a)`: where it stands among the steps, and where a second one closed the passage. */
export interface Mark {
  readonly name: string;
  readonly at: number;
}

/** The steps of one row, or of one bracket, while they are read. */
export class StepList {
  readonly steps: Step[] = [];
  readonly marks: Mark[] = [];
  /** What is worked at the ends of the row, put into its place when the row is read. */
  readonly edges: EdgeWork[] = [];
  /** Index of the first step since the last `;` or mark: what `, three times` behind a comma repeats. */
  clauseStart = 0;
  /** Index of the first step behind `continue`, or null. */
  continuedFrom: number | null = null;

  push(step: Step): void {
    this.steps.push(step);
  }

  startClause(): void {
    this.clauseStart = this.steps.length;
  }

  /** Makes one repeat of the steps from index `from`; false when there are none. */
  wrap(from: number, style: RepeatStep['style'], extent: Extent): boolean {
    const inner = this.steps.splice(from);
    const first = inner[0];
    const last = inner.at(-1);
    if (!first || !last) return false;
    const only = inner.length === 1 ? first : null;
    if (only?.kind === 'work' && isOnce(only.extent) && style === 'bracket') {
      this.steps.push({...only, extent, span: {start: first.span.start, end: last.span.end}});
    } else {
      const span = {start: first.span.start, end: last.span.end};
      this.steps.push({kind: 'repeat', style, steps: inner, extent, span});
    }
    this.clauseStart = Math.min(this.clauseStart, this.steps.length - 1);
    while ((this.marks.at(-1)?.at ?? -1) >= from) this.marks.pop();
    return true;
  }
}

function isOnce(extent: Extent): boolean {
  return extent.kind === 'times' && extent.count.values.length === 1 && extent.count.values[0] === 1;
}
