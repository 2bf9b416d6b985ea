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

  const CSL: {
    readonly Engine: new (
      system: CiteprocSystem,
      styleXml: string,
      language: string,
      forceLanguage: boolean,
    ) => CiteprocEngine;
  };
  export default CSL;
}
