import type {CiteprocCite, CiteprocCluster} from 'citeproc';
import {invariant} from '../support/invariant.ts';
import {type BibliographyEntry, currentBibliography, type Rendering} from './bibliography.ts';
import type {Citation, CitationCluster} from './citation.ts';
import type {CitationStyle} from './citation-style.ts';
import {escapeHtml} from './escape-html.ts';
import type {Library} from './library.ts';
import {linkAddresses} from './link-addresses.ts';
import type {Locator} from './locator.ts';
import type {Source} from './source.ts';
import {authorLabel, sourceLabel} from './source-label.ts';

/** What stands in the text for one cluster. In the note style a raised number, which is also `note`. */
interface RenderedCluster {
  readonly html: string;
  /** Counts from 1 within the item; null in other styles and where no source is known. */
  readonly note: number | null;
}

export interface RenderedItem {
  /** One for each cluster, in the order given. */
  readonly clusters: readonly RenderedCluster[];
  /** The note style's notes, note 1 first; empty in other styles. */
  readonly notes: readonly string[];
  /** The sources cited, in the style's order. */
  readonly references: readonly BibliographyEntry[];
}

/** Renders one item's clusters in the order they are printed; numbers and notes start at 1. */
export function renderItem(rendering: Rendering, clusters: readonly CitationCluster[]): RenderedItem {
  const plans = clusters.map((cluster) => planCluster(cluster, rendering.library));
  const cited = plans.filter(({known}) => known.length > 0);
  const rows = rendering.processor.rebuildProcessorState(
    cited.map((plan, index) => toCiteproc(plan, index + 1, rendering.style)),
    'html',
    [],
  );
  const texts = cited.map((plan, index) => finishText(rows[index]?.[2] ?? '', plan, rendering.style));
  const numberOf = new Map(cited.map((plan, index) => [plan, index + 1]));
  return {
    clusters: plans.map((plan) => {
      const number = numberOf.get(plan) ?? null;
      const text = number === null ? null : inTheText(plan, number, texts[number - 1] ?? '', rendering.style);
      const html = [...(text === null ? [] : [text]), ...plan.unknown.map(markUnknown)].join(' ');
      return {html, note: rendering.style === 'note' ? number : null};
    }),
    notes: rendering.style === 'note' ? texts : [],
    references: currentBibliography(rendering),
  };
}

interface KnownCitation {
  readonly citation: Citation;
  readonly id: string;
  readonly source: Source;
}

/** A cluster with its citations sorted into those of known and of unknown sources. */
interface ClusterPlan {
  readonly known: readonly KnownCitation[];
  readonly unknown: readonly Citation[];
  /** The source whose author stands in the sentence, in an in-text cluster. */
  readonly named: Source | null;
}

function planCluster({citations, inText}: CitationCluster, library: Library): ClusterPlan {
  const known = joinPlaces(citations.filter(({key}) => library.has(key))).map((citation) => ({
    citation,
    id: library.idOf(citation.key),
    source: library.source(citation.key),
  }));
  const unknown = citations.filter(({key}) => !library.has(key));
  const first = known[0];
  return {known, unknown, named: inText && first?.citation === citations[0] ? (first?.source ?? null) : null};
}

/** Two places in one source, one behind the other, are one citation: the style would name the source twice. */
function joinPlaces(citations: readonly Citation[]): readonly Citation[] {
  const joined: Citation[] = [];
  for (const citation of citations) {
    const last = joined.at(-1);
    const both = last === undefined ? null : joinedLocator(last, citation);
    if (last === undefined || both === null) joined.push(citation);
    else joined.splice(-1, 1, {...last, locator: both, suffix: citation.suffix});
  }
  return joined;
}

function joinedLocator(first: Citation, second: Citation): Locator | null {
  const [one, two] = [first.locator, second.locator];
  const isPlain = first.suffix === '' && second.prefix === '' && first.key === second.key;
  if (!isPlain || one === null || two === null || one.label !== two.label) return null;
  return {label: one.label, value: one.value === two.value ? one.value : `${one.value}, ${two.value}`};
}

function toCiteproc(plan: ClusterPlan, number: number, style: CitationStyle): CiteprocCluster {
  const isComposite = plan.named !== null && style === 'author-date';
  return {
    citationID: String(number),
    citationItems: plan.known.map(({citation, id}, index) => toCite(citation, id, style, index === 0)),
    properties: {noteIndex: style === 'note' ? number : 0, ...(isComposite ? {mode: 'composite'} : {})},
  };
}

function toCite(citation: Citation, id: string, style: CitationStyle, isFirst: boolean): CiteprocCite {
  const {locator, prefix, suffix} = citation;
  const beginsNote = style === 'note' && isFirst;
  const shownPrefix = beginsNote ? prefix.charAt(0).toUpperCase() + prefix.slice(1) : prefix;
  return {
    id,
    ...(locator === null ? {} : toCslLocator(locator, style)),
    ...(prefix === '' ? {} : {prefix: `${shownPrefix} `}),
    ...(suffix === '' ? {} : {suffix: /^[,.:!?]/.test(suffix) ? suffix : ` ${suffix}`}),
    'suppress-author': citation.suppressAuthor,
  };
}

/**
 * `plate` and `time` are terms of our own, see `citation-locale.ts`; a CSL `timestamp` is printed bare. Given a hyphen
 * instead of a dash, the processor shortens a range as the style wants: Chicago's notes say `112–14`.
 */
function toCslLocator({label, value}: Locator, style: CitationStyle) {
  if (label === 'time') return {label: style === 'numeric' ? 'time' : 'timestamp', locator: value};
  return {label, locator: style === 'note' && label === 'page' ? value.replaceAll('–', '-') : value};
}

function finishText(html: string, {known, named}: ClusterPlan, style: CitationStyle): string {
  const source = known[0]?.source;
  invariant(source !== undefined, 'only clusters with a known source are rendered');
  if (/\[(?:NO_PRINTED_FORM|CSL STYLE ERROR)/.test(html)) return escapeHtml(sourceLabel(source));
  // Numbers alone stand closer: `(1; 3)` is `(1,3)`.
  if (style === 'numeric' && /^\([\d–; ]+\)$/.test(html)) return html.replaceAll('; ', ',');
  // APA joins two names by `&` in brackets, but by `and` in a sentence.
  const isInSentence = named !== null && style === 'author-date' && !authorLabel(named)?.includes('&');
  return linkAddresses(isInSentence ? html.replace(/,? &#38; (?=[^(]*\()/, ' and ') : html);
}

function inTheText({named}: ClusterPlan, number: number, text: string, style: CitationStyle): string {
  const mark = style === 'note' ? `<sup>${number}</sup>` : text;
  if (named === null || style === 'author-date') return mark;
  const name = authorLabel(named);
  const label = name === null ? `<i>${escapeHtml(named.title ?? named.id)}</i>` : escapeHtml(name);
  return style === 'note' ? `${label}${mark}` : `${label} ${mark}`;
}

function markUnknown({key}: Citation): string {
  return `<span class="unknown-source">@${escapeHtml(key)}</span>`;
}
