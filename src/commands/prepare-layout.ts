import {composeBinder} from '../compose/compose-binder.ts';
import {gaugeInWords} from '../compose/gauge-in-words.ts';
import {type PrintedPicture, photoRequests} from '../compose/photo-requests.ts';
import {countFindings} from '../diagnostics/count-findings.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import type {Binder} from '../model/binder.ts';
import {scalePhoto} from '../photos/scale-photo.ts';
import {photosFolder} from '../pipeline.ts';
import {loadLayouts} from './load-layouts.ts';
import type {OpenedBinder} from './open-binder.ts';

/** Everything that any document of `binder` is made from, with all that was found on the way. */
export async function prepareLayout(opened: OpenedBinder, binder: Binder): Promise<LayoutInput> {
  const [layouts, pictures] = await Promise.all([loadLayouts(opened.workspace), scalePhotos(opened, binder)]);
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

/** By `photoKey` of file and width: the same picture may be printed in two sizes. */
async function scalePhotos(
  {workspace, photoCache}: OpenedBinder,
  binder: Binder,
): Promise<ReadonlyMap<string, PrintedPicture>> {
  const scaled = new Map<string, PrintedPicture>();
  for (const {key, file, widthMillimetres} of photoRequests(binder)) {
    const facts = binder.photos.get(file);
    const bytes = facts?.ok ? await workspace.readBytes(`${photosFolder}${file}`) : null;
    if (!facts?.ok || bytes === null || scaled.has(key)) continue;
    const picture = await scalePhoto(bytes, widthMillimetres, photoCache);
    scaled.set(key, {
      source: `data:image/jpeg;base64,${Buffer.from(picture).toString('base64')}`,
      widthMillimetres,
      heightMillimetres: (widthMillimetres * facts.height) / facts.width,
    });
  }
  return scaled;
}
