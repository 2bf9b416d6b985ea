import type {Finding} from '../diagnostics/finding.ts';
import type {Binder} from '../model/binder.ts';
import type {ComposedItem, ReferenceEntry, SafeHtml} from '../model/composed.ts';
import type {ItemDifference} from '../model/difference.ts';
import type {Measurement} from '../model/schema/item-fields.ts';
import type {FontFile} from './font-files.ts';

/** A font file with its content as a data URI. */
export interface FontFace extends FontFile {
  readonly source: string;
}

/** Everything a document is made from. The layout reads no file and computes no number. */
export interface LayoutInput {
  readonly binder: Binder;
  /** By item id, in the order of the syllabus; an item that could not be composed is missing. */
  readonly composed: ReadonlyMap<string, ComposedItem>;
  /** The full reference list, in its printed order. */
  readonly references: readonly ReferenceEntry[];
  /**
   * The files of the layouts folder by their path in it, such as `sheets/swatch.hbs` or `styles/type.css`. A
   * candidate's file stands in the place of ours of the same name.
   */
  readonly templates: ReadonlyMap<string, string>;
  /** One for each of `fontFiles`. */
  readonly fonts: readonly FontFace[];
  /** Set while errors stand: every leaf is then marked as a draft. */
  readonly draft: {readonly errors: number} | null;
  readonly findings: readonly Finding[];
  /**
   * What stands at the head of sheets, by their label, in a draft for the candidate's own desk: there findings stand on
   * the sheets, and every leaf is called a draft. Left out for everything else.
   */
  readonly notesAtHead?: ReadonlyMap<string, SafeHtml>;
  /**
   * The mean gauge of a measurement in words with its units, such as `19.7 sts and 27 rows over 10 cm`; null where
   * nothing was counted.
   */
  /** What changed in an item since it was last sent, by id; only where an old version is kept. */
  readonly differences?: ReadonlyMap<string, ItemDifference>;
  readonly gaugeInWords: (measured: Pick<Measurement, 'stitches' | 'rows'>) => string | null;
}
