/** The part of citeproc 2.4 that we use; the package brings no types. */
declare module 'citeproc' {
  export interface CiteprocCite {
    readonly id: string;
    readonly locator?: string;
    readonly label?: string;
    readonly prefix?: string;
    readonly suffix?: string;
    readonly 'suppress-author'?: boolean;
  }

  export interface CiteprocCluster {
    readonly citationID: string;
    readonly citationItems: readonly CiteprocCite[];
    readonly properties: {readonly noteIndex: number; readonly mode?: 'composite'};
  }

  export interface CiteprocSystem {
    retrieveLocale(language: string): string;
    retrieveItem(id: string): Readonly<Record<string, unknown>>;
    /** Text put behind the bibliography entry of the item with this `system_id`. */
    embedBibliographyEntry(systemId: string): string;
  }

  export interface CiteprocEngine {
    /** Forgets everything and renders the clusters; the rows are `[citationID, noteIndex, html]` in the same order. */
    rebuildProcessorState(
      clusters: readonly CiteprocCluster[],
      mode: 'html',
      uncitedIds: readonly string[],
    ): readonly (readonly [string, number, string])[];
    /** Makes these the items that the bibliography lists, with the citations as they are. */
    updateItems(ids: readonly string[]): unknown;
    /** `[facts, entries]`; the ids in `entry_ids` stand in the order of the entries. False when the style has no list. */
    makeBibliography():
      | readonly [{readonly entry_ids: readonly (readonly string[])[]}, readonly string[]]
      | false;
  }

  /** One step of a style as the processor runs it. */
  export interface CiteprocToken {
    /** The macro that it calls; only where it calls one. */
    readonly postponed_macro?: string;
    readonly strings: {readonly sort_direction?: number};
    readonly execs: ((state: CiteprocBuilder, item: unknown, cite: unknown) => void)[];
  }

  /** An engine while the processor builds it; not part of what the processor promises. */
  export interface CiteprocBuilder {
    readonly build: {
      readonly root: 'citation' | 'bibliography';
      /** `_sort` within a sort key, else empty. */
      readonly extension: string;
      readonly substitute_level: {value(): unknown};
    };
    readonly citation_sort: {tokens: CiteprocToken[]};
    readonly bibliography_sort: {tokens: CiteprocToken[]};
    /** Tells each of `tokens` which one is next. */
    configureTokenList(tokens: readonly CiteprocToken[]): void;
  }

  export interface Citeproc {
    /** Writes what the macro that `call` calls does to the end of `target`. */
    expandMacro: (this: CiteprocBuilder, call: CiteprocToken, target: CiteprocToken[]) => void;
    /** Runs one step; the place of the next one in its list. */
    readonly tokenExec: (this: CiteprocBuilder, token: CiteprocToken, item: unknown, cite: unknown) => number;
    readonly Token: new (name: string, type: number) => CiteprocToken;
    readonly SINGLETON: number;
    readonly Engine: new (
      system: CiteprocSystem,
      styleXml: string,
      language: string,
      forceLanguage: boolean,
    ) => CiteprocEngine;
  }
  const CSL: Citeproc;
  export default CSL;
}
