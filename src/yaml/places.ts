import type {Place} from '../diagnostics/finding.ts';

/**
 * Keys and indexes from the top of a YAML document to a value, such as `['techniques', 0, 'cite']`. Where the author wrote a
 * single value instead of a list, index 0 is that value.
 */
export type YamlPath = readonly (string | number)[];

/** Where each key and value of a YAML document stands in its file. A path that does not exist climbs to its nearest parent. */
export interface Places {
  /** The value at `path`; for a missing value the key or the value of the nearest parent that exists. */
  value(path: YamlPath): Place;
  /** The key at `path`, for findings about the key itself. */
  key(path: YamlPath): Place;
  /**
   * A part of the plain or quoted scalar at `path`, by offsets in its value; the whole value when the scalar is
   * folded, escaped or otherwise not a slice of the file.
   */
  within(path: YamlPath, start: number, end: number): Place;
  has(path: YamlPath): boolean;
}
