/** An HTML document to print. `anchors` are the ids of its sheets in page order; each is the id of an element in `html`. */
export interface PrintJob {
  readonly html: string;
  readonly anchors: readonly string[];
}

/** Something that would make a page wrong in silence. */
export interface PrintTrouble {
  readonly kind:
    | 'overflow'
    | 'missing picture'
    | 'missing font'
    | 'missing glyph'
    | 'broken link'
    | 'request refused'
    | 'unsettled pages';
  /** The id of the sheet, when known. */
  readonly anchor: string | null;
  /** The id of the innermost element around it that has one, when known: one tag of many on a sheet. */
  readonly within?: string | null;
  /** What a knitter can look for on the page: its words in backticks, and by how much. */
  readonly detail: string;
}

export interface PrintedDocument {
  readonly pdf: Uint8Array;
  readonly pageCount: number;
  /** The page, counted from 0, on which each anchor's element begins; empty when only some pages were printed. */
  readonly starts: ReadonlyMap<string, number>;
  readonly troubles: readonly PrintTrouble[];
}

/** What the finished file says of its leaves beyond what is drawn on them. */
export interface LeafNotes {
  /** The pages, counted from 0, that are marked as a draft. */
  readonly drafts: readonly number[];
  /** Leaf numbers that these leaves leave no room for: what lies in the binder under them goes. */
  readonly gone: readonly string[];
}

/** What is written into the finished file. `labels` has one entry a page. */
export interface PdfDetails {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly language: string;
  readonly labels: readonly string[];
  /** How a viewer's print dialogue is set at first. */
  readonly sides: 'single' | 'duplex';
  readonly notes: LeafNotes;
  /** Year-month-day; stored as noon UTC so that two builds give the same bytes. */
  readonly date: string;
}
