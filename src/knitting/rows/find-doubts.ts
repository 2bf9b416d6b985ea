import type {Doubt, Step, WrittenPattern} from './row-syntax.ts';

/** The ways of reading that matter for this pattern. */
export function findDoubts({entries}: WrittenPattern): ReadonlySet<Doubt> {
  const doubts = new Set<Doubt>();
  for (const entry of entries) if (entry.kind === 'row') addDoubts(entry.steps, doubts);
  return doubts;
}

function addDoubts(steps: readonly Step[], doubts: Set<Doubt>): void {
  for (const step of steps) {
    if (step.kind === 'bind off' && step.extent.kind !== 'to end') doubts.add('bind-off loop');
    if (step.kind === 'work' && step.isDoubtful) doubts.add('yarn forward');
    if ('extent' in step && step.extent.kind === 'more' && step.extent.isPlain) doubts.add('repeat times');
    if (step.kind === 'either') doubts.add(step.doubt);
    if ('steps' in step) addDoubts(step.steps, doubts);
    if ('ways' in step) for (const way of step.ways) addDoubts(way, doubts);
  }
}
