import {composeBinder} from '../compose/compose-binder.ts';
import {gaugeInWords} from '../compose/gauge-in-words.ts';
import {photoRequests} from '../compose/photo-requests.ts';
import {countFindings} from '../diagnostics/count-findings.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import type {Binder} from '../model/binder.ts';
import {loadLayouts} from './load-layouts.ts';
import type {OpenedBinder} from './open-binder.ts';
import {scalePhotos} from './scale-photos.ts';

/** Everything that any document of `binder` is made from, with all that was found on the way. */
export async function prepareLayout(opened: OpenedBinder, binder: Binder): Promise<LayoutInput> {
  const [layouts, pictures] = await Promise.all([
    loadLayouts(opened.workspace),
    scalePhotos(opened, binder.photos, photoRequests(binder)),
  ]);
  const composition = await composeBinder(binder, pictures);
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
