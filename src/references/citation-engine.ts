import {type BibliographyEntry, markEntry, renderBibliography} from './bibliography.ts';
import type {CitationCluster} from './citation.ts';
import {type CitationLanguage, loadCitationLocale} from './citation-locale.ts';
import {type CitationStyle, loadCitationStyle} from './citation-style.ts';
import {Library} from './library.ts';
import {type RenderedItem, renderItem} from './render-item.ts';
import {sharingSortMacros} from './share-sort-macros.ts';
import type {Source} from './source.ts';
import {toCslItem} from './to-csl-item.ts';

/**
 * Renders citations. All HTML is inline (`i`, `b`, `sup`, `sub`, `span`, `a` to http addresses); text from sources and
 * citations is escaped. A key that no source has becomes `<span class="unknown-source">`.
 */
export interface CitationEngine {
  /** The clusters of one item in the order they are printed. Numbers and notes start anew: leaves are loose. */
  renderItem(clusters: readonly CitationCluster[]): RenderedItem;
  /** The full list in alphabetical order, without numbers; each known key once. */
  renderBibliography(keys: readonly string[]): readonly BibliographyEntry[];
}

interface CitationEngineOptions {
  readonly style: CitationStyle;
  readonly language: CitationLanguage;
  /** In the place of `style`, which then says what it works like. */
  readonly ownStyle?: string | undefined;
  /** Of two sources with one id the first counts. */
  readonly sources: readonly Source[];
}

/** Loads the citation processor and one style: call it only when something is cited, and once for a binder. */
export async function createCitationEngine(options: CitationEngineOptions): Promise<CitationEngine> {
  const {style, language} = options;
  const [{default: CSL}, styleXml, localeXml] = await Promise.all([
    import('citeproc'),
    options.ownStyle ?? loadCitationStyle(style),
    loadCitationLocale(language),
  ]);
  const library = new Library(options.sources);
  const system = {
    retrieveLocale: () => localeXml,
    retrieveItem: (id: string) => toCslItem(library.sourceOf(id), id, style),
    embedBibliographyEntry: markEntry,
  };
  const processor = withRealErrors(() =>
    sharingSortMacros(CSL, () => new CSL.Engine(system, styleXml, language, true)),
  );
  return {
    renderItem: (clusters) => withRealErrors(() => renderItem({processor, style, library}, clusters)),
    renderBibliography: (keys) => withRealErrors(() => renderBibliography({processor, style, library}, keys)),
  };
}

/** The processor throws strings; whatever it throws is a bug of ours, since only known sources reach it. */
function withRealErrors<T>(run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw new Error(`bug: the citation processor failed: ${String(error)}`, {cause: error});
  }
}
