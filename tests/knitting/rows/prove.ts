import {type ProvedPattern, proveRows} from '../../../src/knitting/rows/prove-rows.ts';
import {type ReadRows, readRows} from '../../../src/knitting/rows/read-rows.ts';

export interface Proof extends ReadRows {
  readonly text: string;
  readonly proved: ProvedPattern;
  /** Of reading and of proof, each with the text that it points at. */
  readonly found: readonly {readonly message: string; readonly actual: string}[];
}

/** Reads and proves a block. */
export function prove(text: string): Proof {
  const read = readRows(text);
  const proved = proveRows(read.pattern);
  const found = [...read.problems, ...proved.problems].map(({message, span}) => ({
    message,
    actual: text.slice(span.start, span.end),
  }));
  return {...read, text, proved, found};
}

/** Stitches after each row, in the first size. */
export function countsOf({proved}: Proof): number[] {
  return proved.sizes[0]?.rows.map((row) => row.out) ?? [];
}
