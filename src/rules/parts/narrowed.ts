import type {Place} from '../../diagnostics/finding.ts';
import type {Item} from '../../model/binder.ts';

/** An item's lines, taken apart once however many findings it has. */
const linesOf = new WeakMap<Item, readonly string[]>();

/**
 * The last `part` in what stands at `place` of the item's file, such as the target of a link; the whole place when the
 * part is written otherwise, with escapes or over two lines.
 */
export function narrowed(item: Item, place: Place, part: string): {place: Place; actual?: string} {
  const lines = linesOf.get(item) ?? item.text.split('\n');
  linesOf.set(item, lines);
  const line = lines[place.line - 1] ?? '';
  const end = place.endLine === place.line ? place.endColumn - 1 : line.length;
  const start = line.slice(0, end).lastIndexOf(part);
  if (part === '' || start < place.column - 1) return {place};
  return {
    place: {...place, column: start + 1, endLine: place.line, endColumn: start + 1 + part.length},
    actual: part,
  };
}
