import type {RequirementStatus} from '../../model/binder-status.ts';
import {hung} from './hung.ts';

/** Each item with its title behind its id, and below it what `says` has to say of it. */
export function itemLines(
  list: readonly RequirementStatus[],
  says: (status: RequirementStatus) => string | null,
  columns: number,
): readonly string[] {
  const width = Math.max(0, ...list.map(({id}) => id.length));
  return list.flatMap((one) => {
    const said = says(one);
    return [
      ...hung(`  ${one.id.padEnd(width)}  `, one.title, columns),
      ...(said === null ? [] : hung(`  ${' '.repeat(width)}  `, said, columns)),
    ];
  });
}
