import type {CitationStyle} from './citation-style.ts';

/** A citation style of the candidate's own, in the Citation Style Language. */
export interface OwnStyle {
  readonly xml: string;
  /** Which of our three it works like: whether it sets notes, numbers, or names in the text. */
  readonly like: CitationStyle;
  /** Whether its citations print the page. */
  readonly printsLocator: boolean;
}

/** Letters that a style may have; the longest that are published have about 100,000. */
const largest = 400_000;

/** Reads the text of a `.csl` file as far as is needed to know that it is an independent CSL style; a sentence when it is not. */
export function readOwnStyle(text: string): OwnStyle | string {
  const xml = text.replace(/^\uFEFF/, '').trim();
  if (xml.length > largest) return `it has more than ${largest} letters`;
  if (/<!DOCTYPE|<!ENTITY/i.test(xml)) return 'it has a document type, which no style needs';
  const written = withoutComments(xml);
  const opening = /^(?:<\?xml[^>]*\?>)?\s*<style\b([^>]*)>/.exec(written)?.[1];
  if (opening === undefined || !opening.includes('http://purl.org/net/xbiblio/csl'))
    return 'it is not a CSL style';
  if (!/<\/style>$/.test(xml)) return 'it does not end with `</style>`';
  if (/rel="independent-parent"/.test(written)) return 'it only names another style; take that one';
  const citationAt = written.search(/<citation\b/);
  if (citationAt < 0 || !written.includes('</citation>', citationAt)) return 'it has no `<citation>`';
  if (!/<bibliography\b/.test(written)) return 'it has no `<bibliography>`, which the reference lists need';
  const setsNotes = /\bclass="note"/.test(opening);
  const setsNumbers = written.includes('variable="citation-number"');
  return {
    xml,
    like: setsNotes ? 'note' : setsNumbers ? 'numeric' : 'author-date',
    printsLocator: written.includes('variable="locator"'),
  };
}

/** Not by a pattern: over many comments one would look for their ends in every possible way. */
function withoutComments(xml: string): string {
  const parts: string[] = [];
  let at = 0;
  for (;;) {
    const start = xml.indexOf('<!--', at);
    const end = start < 0 ? -1 : xml.indexOf('-->', start + 4);
    if (end < 0) return [...parts, xml.slice(at)].join('');
    parts.push(xml.slice(at, start));
    at = end + 3;
  }
}
