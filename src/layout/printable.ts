/**
 * How many pages each sheet of a document takes, by the sheet's anchor; blank backs are left out. Null while nothing
 * has been printed yet.
 */
export type PageCounts = ReadonlyMap<string, number> | null;

/** One sheet: everything that starts on a fresh leaf and is numbered within itself. */
export interface Sheet {
  /** Id of its `<section>` and key in `PageCounts`, such as `sheet-S-07`. */
  readonly anchor: string;
  /** What stands before the `·` of its leaf numbers: the item's id, or a word such as `Contents`. */
  readonly label: string;
  readonly title: string;
  /** A blank back: the empty side that lets the next sheet begin on a right-hand page. */
  readonly blank: boolean;
}

export interface RenderedSheet extends Sheet {
  /** Whether its leaves are marked as a draft. */
  readonly isDraft: boolean;
}

/** A rendered document and the sheets it consists of, in page order (blank backs included, with the label of the sheet they belong to). */
export interface Printable {
  /** Made when it is first asked for: what sheets there are is known without it. */
  readonly html: string;
  readonly sheets: readonly RenderedSheet[];
  /** Whether the document says how many pages its sheets take; if not, it is the same for whatever counts. */
  readonly usesCounts: boolean;
  /** How a viewer's print dialogue is set at first; as the binder says when left out. */
  readonly sides?: 'single' | 'duplex';
}
