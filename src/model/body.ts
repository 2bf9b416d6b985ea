import type {Root} from 'mdast';
import type {Place} from '../diagnostics/finding.ts';
import type {CitationCluster} from '../references/citation.ts';
import type {PlacedCitation} from './read-citations.ts';

/** A block quote, or words between quotation marks. */
export interface Quotation {
  readonly words: number;
  /** Whether a citation stands with it. */
  readonly isCited: boolean;
  readonly place: Place;
}

/** The Markdown below the front matter, parsed; every position counts in the whole file. */
export interface Body {
  /**
   * The tree, with a node type of ours, `citationCluster`, in the place of citations, and remark-directive's own
   * `leafDirective` and `containerDirective`. A colon with a word after it, as in `:smile`, is text.
   */
  readonly tree: Root;
  readonly clusters: readonly {
    readonly cluster: CitationCluster;
    readonly place: Place;
    readonly citationPlaces: readonly PlacedCitation[];
  }[];
  readonly headings: readonly {readonly depth: number; readonly text: string; readonly place: Place}[];
  readonly images: readonly {
    readonly file: string;
    readonly description: string;
    readonly title: string | null;
    readonly place: Place;
  }[];
  /** `[](#S-07)` and `[text](#S-07)`. */
  readonly crossReferences: readonly {readonly target: string; readonly place: Place}[];
  readonly links: readonly {readonly url: string; readonly place: Place}[];
  readonly rawHtml: readonly {readonly text: string; readonly place: Place}[];
  /** Every directive on lines of its own by name, so that an unknown one is found. */
  readonly directives: readonly {
    readonly name: string;
    readonly attributes: Readonly<Record<string, string>>;
    readonly place: Place;
  }[];
  /** Fenced blocks by the first word of their info string: `rows`, `chart`, … with the place of each text line. */
  readonly blocks: readonly {
    readonly language: string;
    readonly text: string;
    readonly place: Place;
    readonly linePlaces: readonly Place[];
  }[];
  /** What the text quotes, in its order; see `read-quotations.ts`. */
  readonly quotations: readonly Quotation[];
  /** Words as a word processor counts them; see `count-words.ts` for the rule. */
  readonly words: number;
}

declare module 'mdast' {
  interface CitationClusterNode {
    type: 'citationCluster';
    cluster: CitationCluster;
    /** Index in `Body.clusters`. */
    index: number;
    /** As written between the brackets, line by line, with the place at which each piece begins. */
    pieces: readonly {readonly text: string; readonly line: number; readonly column: number}[];
    position?: import('unist').Position | undefined;
  }
  interface PhrasingContentMap {
    citationCluster: CitationClusterNode;
  }
  interface RootContentMap {
    citationCluster: CitationClusterNode;
  }
}
