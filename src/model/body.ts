import type {Root} from 'mdast';
import type {Place} from '../diagnostics/finding.ts';
import type {CitationCluster} from '../references/citation.ts';

/** The Markdown below the front matter, parsed; every position counts in the whole file. */
export interface Body {
  /**
   * The tree, with two node types of ours: `citationCluster` (`cluster: CitationCluster`) in the place of bracketed
   * citations, and remark-directive's own `textDirective`, `leafDirective` and `containerDirective`.
   */
  readonly tree: Root;
  readonly clusters: readonly {
    readonly cluster: CitationCluster;
    readonly place: Place;
    readonly citationPlaces: readonly {readonly whole: Place; readonly key: Place}[];
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
  /** Every directive by name, so that an unknown one is found. */
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
  /** Words as a word processor counts them; see `count-words.ts` for the rule. */
  readonly words: number;
}

declare module 'mdast' {
  interface CitationClusterNode {
    type: 'citationCluster';
    cluster: CitationCluster;
    /** Index in `Body.clusters`. */
    index: number;
    position?: import('unist').Position | undefined;
  }
  interface PhrasingContentMap {
    citationCluster: CitationClusterNode;
  }
  interface RootContentMap {
    citationCluster: CitationClusterNode;
  }
}
