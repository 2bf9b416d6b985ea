import {invariant} from '../support/invariant.ts';

/** How citations look. `author-date` is APA 7, `note` is Chicago 17 with full notes, `numeric` is Vancouver. */
export type CitationStyle = 'author-date' | 'note' | 'numeric';

/**
 * The CSL style as XML. The styles are the work of the Citation Style Language project (citationstyles.org), licensed
 * CC BY-SA 3.0, and come from packages; only the chosen one's package is loaded.
 */
export async function loadCitationStyle(style: CitationStyle): Promise<string> {
  if (style === 'note') {
    const chicago = await import('@citation/csl-style-chicago-fullnote-bibliography/info.json', {
      with: {type: 'json'},
    });
    return chicago.default.content;
  }
  const styles = await import('@citation-js/plugin-csl/lib/styles.json', {with: {type: 'json'}});
  return style === 'author-date' ? styles.default.apa : withLocators(styles.default.vancouver);
}

/**
 * The numeric style prints no locators, but a page must be findable: `(1, p. 57)`, `(1, at 3:20)`, `(1, p. 57; 2)`.
 * Common practice, no source: Citing Medicine, on which the style rests, gives no form for a page in the text.
 */
function withLocators(vancouver: string): string {
  const layout = '<layout delimiter="," prefix="(" suffix=")"><text variable="citation-number"/></layout>';
  invariant(vancouver.includes(layout), 'the numeric style has changed its form');
  return vancouver.replace(
    layout,
    '<layout delimiter="; " prefix="(" suffix=")"><group delimiter=", "><text variable="citation-number"/>' +
      '<group delimiter=" "><label variable="locator" form="short"/><text variable="locator"/></group></group></layout>',
  );
}
