/** A range in a file: lines and columns count from 1, columns in UTF-16 units, the end is exclusive. */
export interface Place {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** `error` keeps the binder a draft; `warning` may be posted; `info` is worth knowing. */
export type Severity = 'error' | 'warning' | 'info';

/** Another place that explains a finding, such as the first use of a name. */
export interface Related {
  readonly file: string;
  readonly place: Place;
  readonly message: string;
}

/** One message of the checker. Every finding has a file and a place; text for people is made in `format-*.ts`. */
export interface Finding {
  /** The rule's permanent id, such as `word-limit`. */
  readonly rule: string;
  readonly severity: Severity;
  /** Path within the binder folder, with forward slashes, such as `content/swatches/ribs.md`. */
  readonly file: string;
  readonly place: Place;
  /** The fact with its values in backticks; no position, no advice. */
  readonly message: string;
  /** What to do, in one sentence. */
  readonly hint: string;
  /** The text at `place`, when the fault is that text. */
  readonly actual?: string;
  /** What could have stood there. */
  readonly expected?: readonly string[];
  readonly related?: readonly Related[];
  /** What is not there yet, for a list of what is still to do. */
  readonly lacks?: Lack;
}

/** So many things, in few words: 40 and `40 words`, 1 and `a citation for ssk`. */
export interface Lack {
  readonly count: number;
  readonly inShort: string;
}

/** The start of a file, for findings about a file as a whole. */
export const fileStart: Place = {line: 1, column: 1, endLine: 1, endColumn: 1};
