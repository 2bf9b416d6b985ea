import type {Result, Span} from '../support/result.ts';

/** CSL's locator labels that we read, and how they are written: p., pp., ch., fig., t. (time), vol., no., §, … */
export type LocatorLabel =
  | 'page'
  | 'chapter'
  | 'figure'
  | 'time'
  | 'volume'
  | 'section'
  | 'plate'
  | 'table'
  | 'paragraph';

export interface Locator {
  readonly label: LocatorLabel;
  /** As written, with an en dash in ranges: `57`, `112–114`, `3:20`. */
  readonly value: string;
}

/** One pointer to a source. Spans count from the start of the text that was parsed. */
export interface Citation {
  readonly key: string;
  readonly locator: Locator | null;
  readonly prefix: string;
  readonly suffix: string;
  /** `-@key`: the author stands in the sentence already. */
  readonly suppressAuthor: boolean;
  readonly span: Span;
  readonly keySpan: Span;
}

/** Citations between one pair of brackets, or one in-text `@key [p. 57]`. */
export interface CitationCluster {
  readonly citations: readonly Citation[];
  readonly inText: boolean;
}

/**
 * Reads what stands between the brackets of `[see @ashdown2011, p. 57; @lunde2016, pp. 112-114, and onward]`, which
 * is also the form used in front matter: `@ashdown2011, p. 57`.
 */
export declare function parseCitations(text: string): Result<readonly Citation[]>;
