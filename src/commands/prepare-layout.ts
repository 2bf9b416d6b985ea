import {composeBinder} from '../compose/compose-binder.ts';
import {gaugeInWords} from '../compose/gauge-in-words.ts';
import {photoRequests} from '../compose/photo-requests.ts';
import {countFindings} from '../diagnostics/count-findings.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import {loadLayouts} from './load-layouts.ts';
import type {OpenedBinder} from './open-binder.ts';
import {scalePhotos} from './scale-photos.ts';

export interface LayoutWishes {
  /** Whether what is found in an item's text is set beside it. */
  readonly notes?: boolean;
  /** The ids of the items that are printed; all of them when left out. */
  readonly only?: ReadonlySet<string>;
}

/** Everything that the documents of `binder` are made from, with all that was found on the way. */
export async function prepareLayout(
  opened: OpenedBinder,
  binder: Binder,
  {notes = false, only}: LayoutWishes = {},
): Promise<LayoutInput> {
  const all = [...itemsById(binder).values()];
  const chosen = only === undefined ? null : all.filter(({id}) => only.has(id));
  const [layouts, pictures] = await Promise.all([
    loadLayouts(opened.workspace),
    scalePhotos(opened, binder.photos, photoRequests(binder, chosen ?? all)),
  ]);
  const composition = await composeBinder(binder, pictures, notes ? opened.findings : null, chosen);
  const findings = sortFindings([...opened.findings, ...composition.findings]);
  return {
    ...layouts,
    binder,
    composed: composition.items,
    references: composition.references,
    draft: draftOf(findings),
    findings,
    gaugeInWords: (measured) => gaugeInWords(measured, binder.settings.units),
  };
}

/** How a binder is marked while errors stand; null when it may be posted. */
export function draftOf(findings: readonly Finding[]): LayoutInput['draft'] {
  const errors = countFindings(findings).error;
  return errors > 0 ? {errors} : null;
}
