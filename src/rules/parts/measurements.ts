import type {Item} from '../../model/binder.ts';
import type {Measurement, Size} from '../../model/schema/item-fields.ts';

/** What was measured of an item, in the order written; none for kinds without knitting. */
export function measurementsOf(item: Item): readonly Measurement[] {
  return 'measured' in item.fields ? item.fields.measured : [];
}

/** The edges of the piece as it is sent: those after blocking, otherwise the last that were measured. */
export function sizeAsSent(
  item: Item,
): {readonly size: Size; readonly path: readonly (string | number)[]} | null {
  const sized = measurementsOf(item).flatMap(({when, size}, index) =>
    size ? [{when, size, path: ['measured', index, 'size']}] : [],
  );
  return sized.findLast(({when}) => when === 'after blocking') ?? sized.at(-1) ?? null;
}
