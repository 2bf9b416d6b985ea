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
  const opening = /^(?:<\?xml[^>]*\?>)?(?:\s|<!--[\s\S]*?-->)*<style\b([^>]*)>/.exec(xml)?.[1];
  if (opening === undefined || !opening.includes('http://purl.org/net/xbiblio/csl'))
    return 'it is not a CSL style';
  if (!/<\/style>$/.test(xml)) return 'it does not end with `</style>`';
  const withoutComments = xml.replace(/<!--[\s\S]*?-->/g, '');
  if (/rel="independent-parent"/.test(withoutComments)) return 'it only names another style; take that one';
  const citation = /<citation\b[\s\S]*?<\/citation>/.exec(withoutComments)?.[0];
  if (citation === undefined) return 'it has no `<citation>`';
  if (!/<bibliography\b/.test(withoutComments))
    return 'it has no `<bibliography>`, which the reference lists need';
  const setsNotes = /\bclass="note"/.test(opening);
  const setsNumbers = withoutComments.includes('variable="citation-number"');
  return {
    xml,
    like: setsNotes ? 'note' : setsNumbers ? 'numeric' : 'author-date',
    printsLocator: withoutComments.includes('variable="locator"'),
  };
}
