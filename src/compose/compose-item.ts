import type {Finding} from '../diagnostics/finding.ts';
import {composeBody} from '../markdown/compose-body.ts';
import {renderComputedTable} from '../markdown/render-computed-table.ts';
import {sanitiseFragment} from '../markdown/sanitise-fragment.ts';
import {type Binder, type Item, itemsById} from '../model/binder.ts';
import type {ComposedItem, SafeHtml} from '../model/composed.ts';
import {photoNameOfUrl} from '../model/photo-name.ts';
import type {CitationEngine} from '../references/citation-engine.ts';
import {lookUpTable} from '../tables/index.ts';
import {type CitedItem, citeItem, techniquesOf} from './cite-item.ts';
import {drawnBlock} from './drawn-block.ts';
import {heatCaution} from './heat-caution.ts';
import {bodyPhotos, listedPhotos, type PrintedPicture, printedPhoto} from './photo-requests.ts';

export interface ItemToCompose {
  readonly binder: Binder;
  readonly item: Item;
  /** Null when nothing in the binder is cited. */
  readonly engine: CitationEngine | null;
  /** Those of `photoRequests`, by key. */
  readonly pictures: ReadonlyMap<string, PrintedPicture>;
  /** Whether each block notes the line it was written on, for a preview. */
  readonly marksLines?: boolean;
  /** Findings in the item's text that are printed beside their blocks, in the order in which they stand there. */
  readonly notes?: readonly Finding[];
}

/** An item with everything computed that its pages show, and what could not be computed. */
export function composeItem({
  binder,
  item,
  engine,
  pictures,
  marksLines = false,
  notes = [],
}: ItemToCompose): {
  readonly item: ComposedItem;
  readonly findings: readonly Finding[];
} {
  const cited = engine ? citeItem(item, engine) : null;
  const table = lookUpTable(binder, item);
  const {html, findings} = composeBody(item, {
    table,
    block: (language, text) => drawnBlock(binder, item, language, text),
    citations: cited?.body ?? [],
    marksLines,
    notes,
    crossReference: (target) => crossReference(binder, target),
    photo: (url) => {
      const request = bodyPhotos(item).find(({file}) => file === photoNameOfUrl(url));
      return (request && printedPhoto(request, pictures)[0]) ?? null;
    },
  });
  const places = new Set(item.body.directives.map(({name}) => name));
  const shown = (name: string): SafeHtml | null => {
    const computed = table(name, {});
    return computed && computed.content.length > 0 ? renderComputedTable(computed) : null;
  };
  const own = (name: string) => ('measured' in item.fields && !places.has(name) ? shown(name) : null);
  return {
    findings,
    item: {
      item,
      body: withCaution(html, heatCaution(item)),
      techniques: techniquesOf(item).map(({name, note}, index) => ({
        name,
        citations: safe(cited?.techniques[index] ?? null),
        note: note ?? null,
      })),
      gauge: own('gauge'),
      size: own('size'),
      attempts: shown('attempts'),
      photos: listedPhotos(binder, item, pictures),
      notes: (cited?.notes ?? []).map(sanitiseFragment),
      references: cited && cited.references.length > 0 ? listOf(cited.references) : null,
      reviewed: safe(cited?.reviewed ?? null),
    },
  };
}

/** Both were made by our own processor or are our own words. */
function withCaution(html: SafeHtml, caution: SafeHtml | null): SafeHtml {
  return caution === null ? html : (`${html}<p class="heat-caution">${caution}</p>` as SafeHtml);
}

function crossReference(binder: Binder, target: string) {
  const item = itemsById(binder).get(target);
  if (!item) return null;
  return {anchor: `sheet-${item.id}`, number: item.id, title: item.title, leaf: `${item.id} · 1`};
}

function safe(html: string | null): SafeHtml | null {
  return html === null ? null : sanitiseFragment(html);
}

function listOf(entries: CitedItem['references']): SafeHtml {
  const lines = entries.map(({number, html}) => {
    const mark = number === null ? '' : `<span class="source-number">${number}.</span> `;
    return `<li>${mark}${sanitiseFragment(html)}</li>`;
  });
  // Each entry went through the sanitiser; the list around it is ours.
  return `<ul class="sources">${lines.join('')}</ul>` as SafeHtml;
}
