import type {CiteprocEngine} from 'citeproc';
import {invariant} from '../support/invariant.ts';
import type {CitationStyle} from './citation-style.ts';
import {escapeHtml} from './escape-html.ts';
import type {Library} from './library.ts';
import {linkAddresses} from './link-addresses.ts';
import {sourceLabel} from './source-label.ts';

export interface BibliographyEntry {
  readonly key: string;
  /** The number by which the numeric style cites it; null in other styles and in the full list. */
  readonly number: number | null;
  readonly html: string;
}

/** What rendering needs: the processor, loaded with a style, and the sources it may ask for. */
export interface Rendering {
  readonly processor: CiteprocEngine;
  readonly style: CitationStyle;
  readonly library: Library;
}

/** The known ones of `keys`, each once, in alphabetical order and without numbers. */
export function renderBibliography(
  rendering: Rendering,
  keys: readonly string[],
): readonly BibliographyEntry[] {
  const {processor, library} = rendering;
  const ids = [...new Set(keys)].filter((key) => library.has(key)).map((key) => library.idOf(key));
  // Given as uncited, items would stay for the next rebuilding.
  processor.rebuildProcessorState([], 'html', []);
  processor.updateItems(ids);
  const entries = currentBibliography(rendering);
  if (rendering.style !== 'numeric') return entries;
  // The numeric style lists in order of citation, which a list for the whole binder does not have.
  return entries
    .map((entry) => ({entry: {...entry, number: null}, label: sourceLabel(library.source(entry.key))}))
    .sort((a, b) => a.label.localeCompare(b.label, 'en'))
    .map(({entry}) => entry);
}

/** The entries for what was last put into the processor. A style may leave a source out: APA does letters and talks. */
export function currentBibliography({processor, library}: Rendering): readonly BibliographyEntry[] {
  const made = processor.makeBibliography();
  invariant(made !== false, 'the citation style has no bibliography');
  return made[1].map((entry) => {
    const [, inside = '', id = ''] = entryPattern.exec(entry) ?? [];
    const source = library.sourceOf(id);
    const [, margin, beside] = numberedPattern.exec(inside) ?? [];
    const html = margin === undefined ? inside.trim() : (beside ?? '').trim();
    const hasNothingToPrint = html === '' || html.includes('[CSL STYLE ERROR');
    return {
      key: source.id,
      number: margin === undefined ? null : Number(margin),
      html: hasNothingToPrint ? escapeHtml(sourceLabel(source)) : linkAddresses(html),
    };
  });
}

/** What the processor is to put behind each entry: an entry with nothing to print is missing, so order does not tell. */
export function markEntry(id: string): string {
  return `<!--${id}-->`;
}

// The processor's own `div`s are for its way of laying a list out.
const entryPattern = /^\s*<div class="csl-entry">(.*)<\/div>\s*<!--(\d+)-->\s*$/s;
const numberedPattern =
  /^\s*<div class="csl-left-margin">(\d+)[^<]*<\/div>(?:<div class="csl-right-inline">(.*)<\/div>)?\s*$/s;
