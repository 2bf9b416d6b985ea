import type {Result} from '../support/result.ts';
import type {Fraction} from './fraction.ts';

/** A unit of length as the author wrote it; `mm`, `cm` and `m` are metric, `in` is the inch of exactly 25.4 mm. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'yd';

/** A length: exact millimetres, and the unit it was written in. */
export interface Length {
  readonly millimetres: Fraction;
  readonly unit: LengthUnit;
  /** As written, such as `10 1/2 in`. */
  readonly text: string;
}

/** A count of stitches or rows over a length, as laid on the knitting with a ruler. */
export interface GaugeCount {
  readonly count: Fraction;
  readonly over: Length;
  /** As written, such as `20.5 over 10 cm`. */
  readonly text: string;
}

/** What a ball holds: length and mass, `200 m / 100 g` or `220 yd / 3.5 oz`. */
export interface PutUp {
  readonly length: Length;
  readonly grams: Fraction;
  readonly text: string;
}

/** Reads `10.2 cm`, `4 in`, `4"`, `10½ in`, `10 1/2 in`, `105 mm`. Spans in problems count from the start of `text`. */
export declare function parseLength(text: string): Result<Length>;

/** Reads `20.5 over 10 cm`, `22 over 4 in`, `20½ over 10 cm`, `20 1/2 sts over 10 cm`, `28 rows over 10 cm`. */
export declare function parseGaugeCount(text: string): Result<GaugeCount>;

/** Reads `200 m / 100 g`, `220 yd / 100 g`, `183 m per 50 g`, `220 yd / 3.5 oz`. */
export declare function parsePutUp(text: string): Result<PutUp>;
