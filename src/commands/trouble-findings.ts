import {type Finding, fileStart, type Severity} from '../diagnostics/finding.ts';
import type {Sheet} from '../layout/printable.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import type {PrintTrouble} from '../print/print-job.ts';

const remedies: Readonly<Record<PrintTrouble['kind'], readonly [Severity, string, string]>> = {
  overflow: ['error', 'does not fit', 'Break or shorten what is named.'],
  'missing picture': ['error', 'a picture was not printed', 'Save the picture again as JPEG or PNG.'],
  'missing font': ['error', 'a font was not loaded', 'Install Swatchleaf again (`npm ci` in a clone).'],
  'missing glyph': [
    'warning',
    'a character is not in our fonts and was printed in another',
    'Write another character in its place, or spell it out.',
  ],
  'broken link': ['error', 'a link leads to no leaf', 'Write the id of an item that is in the binder.'],
  'request refused': [
    'warning',
    'something on the page was to be fetched',
    'Take it out of the layout: pages are printed from what is in the binder alone.',
  ],
  'unsettled pages': [
    'error',
    'the leaf numbers do not settle',
    'Take the leaf numbers out of your own layout, or give them boxes of one width.',
  ],
};

/** What would make a printed page wrong, as findings of the item on whose leaf it stands. */
export function troubleFindings(
  binder: Binder,
  sheets: readonly Sheet[],
  troubles: readonly PrintTrouble[],
): readonly Finding[] {
  const items = itemsById(binder);
  const labels = new Map(sheets.map(({anchor, label}) => [anchor, label]));
  return troubles.map(({kind, anchor, detail}) => {
    const [severity, fact, hint] = remedies[kind];
    const label = anchor === null ? undefined : labels.get(anchor);
    return {
      rule: printedPageRule.id,
      severity,
      file: items.get(label?.split(' ')[0] ?? '')?.file ?? binder.settingsFile,
      place: fileStart,
      message: `on ${label === undefined ? 'a leaf' : `leaf \`${label}\``}: ${fact}: ${detail}`,
      hint,
    };
  });
}

/** The one law that only printing can check. */
export const printedPageRule = {
  id: 'printed-page',
  summary: 'what is on a page fits it, with every picture, character and link',
  severity: 'error',
  explanation:
    'Found while printing: a box that does not fit its leaf, a picture or font that did not load, a character that our fonts lack, ' +
    'a link that leads nowhere. The finding names the leaf and the words to look for.',
} as const;
