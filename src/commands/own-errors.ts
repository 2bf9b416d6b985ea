import type {Finding} from '../diagnostics/finding.ts';
import {type Binder, itemsById} from '../model/binder.ts';

/**
 * The files a sheet is made from, by its name: an item's text, the binder file for the title page, the syllabus for the
 * contents, the library for the references. A divider has none of its own.
 */
export function filesOfSheets(binder: Binder): ReadonlyMap<string, readonly string[]> {
  return new Map<string, readonly string[]>([
    ['Title', [binder.settingsFile]],
    ['Contents', [binder.syllabus.file]],
    ['References', [...new Set(binder.library.map(({file}) => file))]],
    ...[...itemsById(binder).values()].map(({id, file}) => [id, [file]] as const),
  ]);
}

/** The files that the sheets called `names` are made from. */
export function filesOfNamed(binder: Binder, names: ReadonlySet<string>): ReadonlySet<string> {
  return new Set([...filesOfSheets(binder)].flatMap(([name, files]) => (names.has(name) ? files : [])));
}

/** How many errors stand in the files of each sheet, by its name; sheets without any are left out. */
export function ownErrors(binder: Binder, findings: readonly Finding[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const {severity, file} of findings) {
    if (severity === 'error') counts.set(file, (counts.get(file) ?? 0) + 1);
  }
  const errors = new Map<string, number>();
  for (const [sheet, files] of filesOfSheets(binder)) {
    const count = files.reduce((sum, file) => sum + (counts.get(file) ?? 0), 0);
    if (count > 0) errors.set(sheet, count);
  }
  return errors;
}
