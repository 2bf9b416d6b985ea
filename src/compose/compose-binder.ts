import type {Finding} from '../diagnostics/finding.ts';
import {sanitiseFragment} from '../markdown/sanitise-fragment.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import type {ComposedItem, ReferenceEntry} from '../model/composed.ts';
import type {CitationEngine} from '../references/citation-engine.ts';
import {composeItem} from './compose-item.ts';
import type {PrintedPicture} from './photo-requests.ts';

export interface Composition {
  /** By item id, in the order of the syllabus. */
  readonly items: ReadonlyMap<string, ComposedItem>;
  readonly references: readonly ReferenceEntry[];
  readonly findings: readonly Finding[];
}

/** Phase 5, compute: every item with its tables, citations and pictures. `pictures` are those of `photoRequests`, by key. */
export async function composeBinder(
  binder: Binder,
  pictures: ReadonlyMap<string, PrintedPicture>,
): Promise<Composition> {
  const engine = await openEngine(binder);
  const items = new Map<string, ComposedItem>();
  const findings: Finding[] = [];
  for (const item of itemsById(binder).values()) {
    const composed = composeItem({binder, item, engine, pictures});
    items.set(item.id, composed.item);
    findings.push(...composed.findings);
  }
  return {items, references: engine ? listReferences(binder, engine) : [], findings};
}

/** The citation engine takes its time to load: a binder that cites nothing does without. */
export async function openEngine(binder: Binder): Promise<CitationEngine | null> {
  if (!binder.items.some((item) => item.citations.length > 0)) return null;
  const {createCitationEngine} = await import('../references/citation-engine.ts');
  const {language, 'citation-style': style} = binder.settings;
  return createCitationEngine({style, language, sources: binder.library.map(({source}) => source)});
}

/** Every source that is cited, with the items that cite it in the order of the binder. */
function listReferences(binder: Binder, engine: CitationEngine): readonly ReferenceEntry[] {
  const usedIn = new Map<string, Set<string>>();
  for (const item of itemsById(binder).values()) {
    for (const {citation} of item.citations) {
      const ids = usedIn.get(citation.key) ?? new Set();
      usedIn.set(citation.key, ids.add(item.id));
    }
  }
  return engine
    .renderBibliography([...usedIn.keys()])
    .map(({key, html}) => ({key, html: sanitiseFragment(html), usedIn: [...(usedIn.get(key) ?? [])]}));
}
