import type {Finding, Place} from '../../diagnostics/finding.ts';
import type {Binder, Item} from '../../model/binder.ts';

/**
 * Whether reading has already reported something in the front matter's value at `path`. What could not be read was left
 * out of the item, so a rule that misses it there would report the same mistake a second time.
 */
export function isUnread(binder: Binder, item: Item, path: readonly (string | number)[]): boolean {
  const found = readFindingsIn(binder, item.file);
  if (found.length === 0 || !item.places.has(path)) return false;
  const [key, value] = [item.places.key(path), item.places.value(path)];
  return found.some(({place}) => isWithin(place, key) || isWithin(place, value));
}

/** Whether the lines of the front matter could be taken apart; where not, more than one field may be lost. */
export function areFieldsRead(binder: Binder, item: Item): boolean {
  return !readFindingsIn(binder, item.file).some(
    ({rule}) => rule === 'yaml-syntax' || rule === 'front-matter',
  );
}

type Findings = Binder['readFindings'];

/** By findings, which never change: looked through for every item, they would be as many times as there are items. */
const known = new WeakMap<Findings, ReadonlyMap<string, Findings>>();

/** What was reported while the file was read. */
export function readFindingsIn({readFindings}: Binder, file: string): Findings {
  const byFile = known.get(readFindings) ?? findingsByFile(readFindings);
  known.set(readFindings, byFile);
  return byFile.get(file) ?? [];
}

function findingsByFile(findings: Findings): ReadonlyMap<string, Findings> {
  const byFile = new Map<string, Finding[]>();
  for (const finding of findings) {
    const list = byFile.get(finding.file);
    if (list) list.push(finding);
    else byFile.set(finding.file, [finding]);
  }
  return byFile;
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
