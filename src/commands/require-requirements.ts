import type {Binder} from '../model/binder.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {UsageError} from '../support/usage-error.ts';

/** Throws `UsageError` for ids that the syllabus does not have. */
export function requireRequirements({syllabus}: Binder, ids: readonly string[]): void {
  const known = syllabus.sections.flatMap(({requirements}) => requirements.map(({id}) => id));
  const unknown = ids.filter((id) => !known.includes(id));
  if (unknown.length === 0) return;
  const near = unknown.length === 1 ? nearestName(unknown[0] ?? '', known) : null;
  throw new UsageError(
    `the syllabus has no ${englishList(unknown.map((id) => `\`${id}\``))}${near ? `; did you mean \`${near}\`?` : ''}`,
  );
}
