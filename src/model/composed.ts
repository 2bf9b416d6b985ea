import type {Item} from './binder.ts';

declare const safe: unique symbol;
/** HTML made by our own processor: escaped and sanitised. Only this may go into a template unescaped. */
export type SafeHtml = string & {readonly [safe]: true};

/** A picture ready to print: upright, scaled, without location data, as a data URI. */
export interface ComposedPhoto {
  readonly source: string;
  readonly description: string;
  readonly widthMillimetres: number;
  readonly heightMillimetres: number;
}

/** A bar below a picture: its length on paper, and in words what it measures on the knitting. */
export interface ScaleBar {
  readonly millimetres: number;
  readonly words: string;
}

/** A picture of the front matter, which is known better than one in the text. */
export interface ListedPhoto extends ComposedPhoto {
  readonly taken: 'before blocking' | 'after blocking' | null;
  /** Null where it is not said how much the picture shows. */
  readonly scaleBar: ScaleBar | null;
}

/** An item with everything computed that its pages show. */
export interface ComposedItem {
  readonly item: Item;
  readonly body: SafeHtml;
  readonly techniques: readonly {
    readonly name: string;
    readonly citations: SafeHtml | null;
    readonly note: string | null;
  }[];
  /** The gauge table with its plot; null when nothing was counted or when the body places it itself with `::gauge`. */
  readonly gauge: SafeHtml | null;
  /** The measured edges; null likewise. */
  readonly size: SafeHtml | null;
  /** The table of attempts with their trend, for the appendix; null when none was recorded. */
  readonly attempts: SafeHtml | null;
  /** As they stand: each alone, or one taken before blocking beside one taken after. */
  readonly photos: readonly (readonly ListedPhoto[])[];
  /** The notes of the note style, note 1 first; empty in other styles. */
  readonly notes: readonly SafeHtml[];
  /** The sources this item cites, as a list; null when it cites none. */
  readonly references: SafeHtml | null;
  /** The review's own source, rendered; null for other kinds. */
  readonly reviewed: SafeHtml | null;
}

/** One entry of the full reference list, with the ids of the items that cite it. */
export interface ReferenceEntry {
  readonly key: string;
  readonly html: SafeHtml;
  readonly usedIn: readonly string[];
}
