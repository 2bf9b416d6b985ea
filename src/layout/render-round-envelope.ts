import type {Item} from '../model/binder.ts';
import type {LayoutInput} from './layout-input.ts';
import {plainPage} from './planned-sheet.ts';
import type {Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {roundEnvelopeView} from './view-models/round-envelope.ts';

/** What goes with the items of a resubmission: `letter`, `packing list` and the `label` for the parcel. */
export const envelopeDocuments = ['letter', 'packing list', 'label'] as const;
export type EnvelopeDocument = (typeof envelopeDocuments)[number];

const layouts: Readonly<Record<EnvelopeDocument, string>> = {
  letter: 'round-letter',
  'packing list': 'round-packing-list',
  label: 'postal-label',
};

/** `items` are those sent again in `round`, in the order of the syllabus. */
export function renderRoundEnvelope(
  input: LayoutInput,
  document: EnvelopeDocument,
  items: readonly Item[],
  round: number,
): Printable {
  const name = layouts[document];
  const sheet = {
    anchor: `sheet-${name}`,
    label: `Round ${round} ${document}`,
    title: input.binder.settings.certificate.name,
    blank: false,
    layout: name,
    view: roundEnvelopeView(input, items, round),
    page: document === 'packing list' ? plainPage : {hasHead: false, isNumbered: false, edge: null},
  };
  const title = `Round ${round}, ${document}: ${input.binder.settings.candidate.name}`;
  return renderSheets(input, title, [sheet], null);
}
