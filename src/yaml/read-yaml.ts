import type {Place} from '../diagnostics/finding.ts';
import type {Places} from './places.ts';

export interface YamlProblem {
  readonly message: string;
  readonly hint: string;
  readonly place: Place;
}

export interface YamlDocument {
  /** Plain values: strings, numbers, booleans, null, arrays and objects without a prototype to pollute. Null when unreadable. */
  readonly value: unknown;
  readonly places: Places;
  readonly problems: readonly YamlProblem[];
}

/**
 * Reads one YAML 1.2 document (core schema: dates, `yes` and `1:30` stay text). Never throws: aliases, merges, tags, duplicate
 * keys, more than 64 kB and nesting deeper than 30 are problems with a place. `firstLine` is the line of the file on which `text` begins.
 */
export declare function readYaml(text: string, firstLine?: number): YamlDocument;
