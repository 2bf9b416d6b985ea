import type {ElementContent} from 'hast';
import type {Nodes} from 'mdast';
import type {Finding} from '../diagnostics/finding.ts';
import type {ComposedPhoto} from '../model/composed.ts';
import type {ComputedTable, TableLookup} from '../model/computed-table.ts';
import type {ReadingFault} from '../model/reading-rules.ts';
import type {Slots} from './slots.ts';

/** What a cross-reference leads to. */
export interface CrossReferenceTarget {
  /** Id of the element that the link jumps to. */
  readonly anchor: string;
  /** The number of what is pointed at, such as `S-07`. */
  readonly number: string;
  readonly title: string;
  /** The leaf number on which it begins, such as `S-07 · 1`. */
  readonly leaf: string;
}

/** Everything that a body needs and Markdown cannot know. */
export interface BodyLookups {
  readonly table: TableLookup;
  /** What stands in the place of a fenced block; null where it is printed as it is. */
  readonly block: (language: string, text: string) => ComputedTable | null;
  /** HTML of the item's citations, one for each of `Body.clusters`. */
  readonly citations: readonly string[];
  /** Null when nothing has that id. */
  readonly crossReference: (target: string) => CrossReferenceTarget | null;
  /** Null when the picture cannot be printed. */
  readonly photo: (file: string) => ComposedPhoto | null;
  /** Whether each block notes the line it was written on; left out, it does not. */
  readonly marksLines?: boolean;
  /** Findings that are printed beside their blocks, in the order in which they stand beside one; left out, none are. */
  readonly notes?: readonly Finding[];
}

export interface ComposeContext {
  readonly lookups: BodyLookups;
  /** The lookups' citations, sanitised. */
  readonly citations: readonly (readonly ElementContent[])[];
  readonly slots: Slots;
  /** Whether each block notes the line it was written on, for a preview. */
  readonly marksLines: boolean;
  /** Findings that are printed beside their blocks. */
  readonly notes: readonly Finding[];
  /** Begins the ids of footnotes, so that those of two items differ. */
  readonly idPrefix: string;
  report(node: Nodes, fault: Omit<ReadingFault, 'place'>): void;
}
