import type {Finding} from '../diagnostics/finding.ts';
import {sanitiseFragment} from '../markdown/sanitise-fragment.ts';
import {type Binder, type Item, itemsById} from '../model/binder.ts';
import type {ComposedItem, ReferenceEntry} from '../model/composed.ts';
import {unusableStyle} from '../model/own-style.ts';
import {readingFinding} from '../model/reading-rules.ts';
import type {CitationEngine} from '../references/citation-engine.ts';
import {composeItem} from './compose-item.ts';
import {notesOfItem} from './notes-of-item.ts';
import type {PrintedPicture} from './photo-requests.ts';

export interface Composition {
  /** By item id, in the order of the syllabus. */
  readonly items: ReadonlyMap<string, ComposedItem>;
  /** Those of the whole binder; none where only some items are composed, which print no list of them. */
  readonly references: readonly ReferenceEntry[];
  readonly findings: readonly Finding[];
}

/**
 * Phase 5, compute: the `chosen` items with their tables, citations and pictures; all of them when null.
 * `pictures` are those of `photoRequests`, by key. Where `noted` is given, it and what composing finds are set beside the
 * blocks that caused them.
 */
export async function composeBinder(
  binder: Binder,
  pictures: ReadonlyMap<string, PrintedPicture>,
  noted: readonly Finding[] | null = null,
  chosen: readonly Item[] | null = null,
): Promise<Composition> {
  const {engine, findings: ofStyle} = await openEngine(binder);
  const items = new Map<string, ComposedItem>();
  const findings: Finding[] = [...ofStyle];
  for (const item of chosen ?? itemsById(binder).values()) {
    const composed = composeItem({binder, item, engine, pictures});
    const notes = noted === null ? [] : notesOfItem(item, [...noted, ...composed.findings]).besideText;
    const shown = notes.length === 0 ? composed : composeItem({binder, item, engine, pictures, notes});
    items.set(item.id, shown.item);
    findings.push(...composed.findings);
  }
  return {items, references: engine && chosen === null ? listReferences(binder, engine) : [], findings};
}

/** The engine for a binder's citations, and what is wrong with a style of the candidate's own. */
export interface OpenedEngine {
  /** Null where nothing is cited: it takes its time to load, and a binder that cites nothing does without. */
  readonly engine: CitationEngine | null;
  readonly findings: readonly Finding[];
}

export async function openEngine(binder: Binder): Promise<OpenedEngine> {
  if (!binder.items.some((item) => item.citations.length > 0)) return {engine: null, findings: []};
  const {createCitationEngine} = await import('../references/citation-engine.ts');
  const {language, 'citation-style': style, csl} = binder.settings;
  const usual = {style, language, sources: binder.library.map(({source}) => source)};
  const {ownStyle} = binder;
  if (ownStyle === null || csl === undefined)
    return {engine: await createCitationEngine(usual), findings: []};
  try {
    const engine = await createCitationEngine({...usual, style: ownStyle.like, ownStyle: ownStyle.xml});
    // A style may break only when something is set in it.
    engine.renderBibliography(usual.sources.map(({id}) => id));
    return {engine, findings: []};
  } catch {
    // Whatever the processor throws, the style is what it choked on: with ours it renders any source.
    const hint =
      'Take the style anew from where you have it, or take `csl` out; until then the usual style is used.';
    const fault = unusableStyle(csl, 'the citation processor cannot read it', hint, binder.settingsPlaces);
    return {
      engine: await createCitationEngine(usual),
      findings: [readingFinding(binder.settingsFile, fault)],
    };
  }
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
