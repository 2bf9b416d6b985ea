import type {Binder, Section} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {UsageError} from '../support/usage-error.ts';
import {requireKnown} from './require-known.ts';

/** Which sheets of the binder are meant, as they were typed. */
export interface SheetWishes {
  /** Names as they stand on the leaves before the `·`: `S-07`, `Contents`. */
  readonly only: readonly string[];
  /** A section's title or the text on its tab; null where none was named. */
  readonly section: string | null;
}

/** The names of a section's sheets: its divider and its items. Throws `UsageError` when no section is called that. */
export function sheetsOfSection({syllabus}: Binder, wanted: string): readonly string[] {
  const {number, requirements} = findSection(syllabus.sections, wanted);
  return [`Tab ${number}`, ...requirements.map(({id}) => id)];
}

/** Throws `UsageError` when `place`, which has the sheets `known`, lacks one of `names`. */
export function requireSheets(names: readonly string[], known: Iterable<string>, place: string): void {
  requireKnown(names, known, `${place} has no sheet`, 'or');
}

function findSection(sections: readonly Section[], wanted: string): Section {
  const namesOf = ({title, tab}: Section) => [title, tab];
  const same = (name: string) => name.trim().toLowerCase() === wanted.trim().toLowerCase();
  const found = sections.find((section) => namesOf(section).some(same));
  if (found !== undefined) return found;
  const near = nearestName(wanted, sections.flatMap(namesOf));
  const all = englishList(sections.map(({tab}) => `\`${tab}\``));
  throw new UsageError(
    `no section is called \`${wanted}\`; ${near ? `did you mean \`${near}\`?` : `there are ${all}`}`,
  );
}
