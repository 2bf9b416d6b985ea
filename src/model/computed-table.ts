import type {Element} from 'hast';
import type {Problem} from '../support/result.ts';

/** What a directive such as `::gauge` became: content for the page, or why it could not be computed. */
export interface ComputedTable {
  readonly content: readonly Element[];
  /** Problems' spans are ignored: the finding stands at the directive. */
  readonly problems: readonly Omit<Problem, 'span'>[];
}

/** How the Markdown processor asks for a computed table. Null when no table has that name. */
export type TableLookup = (
  name: string,
  attributes: Readonly<Record<string, string>>,
) => ComputedTable | null;
