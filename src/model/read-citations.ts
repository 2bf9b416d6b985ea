import type {Place} from '../diagnostics/finding.ts';
import {type Citation, parseCitations} from '../references/citation.ts';

export interface PlacedCitation {
  readonly citation: Citation;
  readonly whole: Place;
  readonly key: Place;
}

export interface ReadCitations {
  readonly citations: readonly PlacedCitation[];
  readonly problems: readonly {readonly message: string; readonly hint: string; readonly place: Place}[];
}

/** Reads the citations in `text` and finds their places in the file: `placeOf` turns offsets in `text` into a place. */
export function readCitations(text: string, placeOf: (start: number, end: number) => Place): ReadCitations {
  const result = parseCitations(text);
  if (!result.ok) {
    const problems = result.problems.map(({message, hint, span}) => ({
      message,
      hint,
      place: placeOf(span.start, span.end),
    }));
    return {citations: [], problems};
  }
  const citations = result.value.map((citation) => ({
    citation,
    whole: placeOf(citation.span.start, citation.span.end),
    key: placeOf(citation.keySpan.start, citation.keySpan.end),
  }));
  return {citations, problems: []};
}
