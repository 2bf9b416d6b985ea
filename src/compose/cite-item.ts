import type {Item} from '../model/binder.ts';
import type {Citation, CitationCluster} from '../references/citation.ts';
import type {CitationEngine} from '../references/citation-engine.ts';

/** An item's citations as HTML straight from the citation engine, sorted by where they stand. */
export interface CitedItem {
  /** One for each of the item's techniques; null where it cites nothing. */
  readonly techniques: readonly (string | null)[];
  readonly reviewed: string | null;
  /** One for each of `item.body.clusters`. */
  readonly body: readonly string[];
  readonly notes: readonly string[];
  /** In the style's order; numbered in the numeric style. */
  readonly references: readonly {readonly number: number | null; readonly html: string}[];
}

/**
 * Renders an item's citations in the order in which its sheet prints them: the source reviewed, the techniques, the
 * text. Numbers and notes start anew with every item, since leaves are loose.
 */
export function citeItem(item: Item, engine: CitationEngine): CitedItem {
  const clusterOf = (citations: CitationCluster['citations']): CitationCluster => ({
    citations,
    inText: false,
  });
  const reviewed = item.citations.filter(({from}) => from === 'reviews').map(({citation}) => citation);
  const techniques = techniquesOf(item).map(({name}) =>
    item.citations
      .filter((use) => use.from === 'technique' && use.technique === name)
      .map(({citation, calledThere}) => (calledThere === null ? citation : naming(citation, calledThere))),
  );
  const clusters = [
    ...(reviewed.length > 0 ? [clusterOf(reviewed)] : []),
    ...techniques.filter((citations) => citations.length > 0).map(clusterOf),
    ...item.body.clusters.map(({cluster}) => cluster),
  ];
  const rendered = engine.renderItem(clusters);
  const html = rendered.clusters.map((cluster) => cluster.html);
  let next = 0;
  const take = () => html[next++] ?? '';
  return {
    reviewed: reviewed.length > 0 ? take() : null,
    techniques: techniques.map((citations) => (citations.length > 0 ? take() : null)),
    body: item.body.clusters.map(take),
    notes: rendered.notes,
    references: rendered.references,
  };
}

/** The citation with what the source calls the technique behind it. */
function naming(citation: Citation, calledThere: string): Citation {
  return {...citation, suffix: `${citation.suffix}, as “${calledThere}”`};
}

export function techniquesOf(item: Item) {
  return 'techniques' in item.fields ? item.fields.techniques : [];
}
