import type {Finding, Place} from '../../diagnostics/finding.ts';
import type {Binder, Item} from '../../model/binder.ts';

/**
 * Whether reading has already reported something in the front matter's value at `path`. What could not be read was left
 * out of the item, so a rule that misses it there would report the same mistake a second time.
 */
export function isUnread(binder: Binder, item: Item, path: readonly (string | number)[]): boolean {
  if (!item.places.has(path)) return false;
  const [key, value] = [item.places.key(path), item.places.value(path)];
  return binder.readFindings.some(
    (finding: Finding) =>
      finding.file === item.file && (isWithin(finding.place, key) || isWithin(finding.place, value)),
  );
}

/** Whether the lines of the front matter could be taken apart; where not, more than one field may be lost. */
export function areFieldsRead(binder: Binder, item: Item): boolean {
  return !binder.readFindings.some(
    ({file, rule}) => file === item.file && (rule === 'yaml-syntax' || rule === 'front-matter'),
  );
}

/** Whether nothing at all was reported while reading the items, so that what no item names is truly not named. */
export function areItemsRead(binder: Binder): boolean {
  return !binder.readFindings.some(({file}) => file.endsWith('.md'));
}

function isWithin(inner: Place, outer: Place): boolean {
  const startsInside = inner.line > outer.line || (inner.line === outer.line && inner.column >= outer.column);
  const endsInside =
    inner.endLine < outer.endLine || (inner.endLine === outer.endLine && inner.endColumn <= outer.endColumn);
  return startsInside && endsInside;
}
