import {createMemoryWorkspace} from '../../io/memory-workspace.ts';
import {fontCss} from '../../layout/font-css.ts';
import type {FontFace} from '../../layout/layout-input.ts';
import {type PrintBrowser, withBrowser} from '../../print/browser.ts';
import {type BrowserWishes, findBrowser} from '../../print/find-browser.ts';
import {printPdf} from '../../print/html-to-pdf.ts';
import {thisMachine} from '../../print/machine.ts';
import {readPdfFacts} from '../../print/pdf-facts.ts';
import {OperationalError} from '../../support/operational-error.ts';
import {plural} from '../../support/plural.ts';
import {loadLayouts} from '../load-layouts.ts';
import {fine, lacks, note, type Seen} from './machine-fact.ts';

/** Our fonts and layouts, whether the browser is there and starts, and whether it puts the fonts into a PDF. */
export async function seeBrowser(
  wishes: BrowserWishes,
): Promise<{readonly fonts: Seen; readonly browser: Seen; readonly printing: Seen}> {
  const loaded = await loadLayouts(createMemoryWorkspace()).catch(unlessOperational);
  const fonts =
    loaded instanceof OperationalError
      ? lacks(loaded.message, 'Install Swatchleaf again.')
      : fine(
          `${plural(loaded.fonts.length, 'font file')} and ${plural(loaded.templates.size, 'layout')} of ours`,
        );
  const notTried = note('not tried', 'See to what is lacking above, then ask again.');
  const search = findBrowser(wishes, thisMachine());
  if (!search.ok) {
    const remedy = search.isNamed
      ? 'Name the whole path of a browser, or none.'
      : 'Install Chromium, Google Chrome or Microsoft Edge.';
    return {fonts, browser: lacks(search.message, remedy), printing: notTried};
  }
  const {browser: found} = search;
  let version: string | null = null;
  let printing: Seen | null = null;
  try {
    await withBrowser(found, async (browser) => {
      ({version} = browser);
      if (!(loaded instanceof OperationalError)) printing = await tryPrinting(browser, loaded.fonts);
    });
  } catch (error) {
    const {message} = unlessOperational(error);
    const remedy =
      'Install Chromium, Google Chrome or Microsoft Edge anew, or name another one with `--browser PATH`.';
    if (version === null) return {fonts, browser: lacks(message, remedy), printing: notTried};
    printing ??= lacks(message, remedy);
  }
  return {
    fonts,
    browser: fine(`${version} at ${found.path} (${found.origin})`),
    printing: printing ?? notTried,
  };
}

/** One line in each cut of each font. */
async function tryPrinting(browser: PrintBrowser, fonts: readonly FontFace[]): Promise<Seen> {
  const cuts = new Set(fonts.map(({family, weight, style}) => `font:${style} ${weight} 12pt '${family}'`));
  const lines = [...cuts].map((style) => `<p style="${style}">Knit 2, purl 2</p>`).join('');
  const html = `<!doctype html><html lang="en"><head><title>Fonts</title><style>${fontCss(fonts)}</style></head><body><main id="fonts">${lines}</main></body></html>`;
  const {pdf, troubles} = await printPdf(browser, {html, anchors: ['fonts']}, {tagged: true});
  const printed = readPdfFacts(pdf).fonts;
  const remedy = 'Name another browser with `--browser PATH`.';
  const loose = printed.filter(({embedded}) => !embedded);
  if (loose[0]) return lacks(`the font ${loose[0].name} is not in the PDF`, remedy);
  if (troubles[0]) return lacks(`${troubles[0].kind}: ${troubles[0].detail}`, remedy);
  if (printed.length < cuts.size)
    return lacks(`${printed.length} of ${plural(cuts.size, 'font')} are in the PDF`, remedy);
  return fine(`one page with all ${plural(printed.length, 'font')} in it`);
}

function unlessOperational(error: unknown): OperationalError {
  if (error instanceof OperationalError) return error;
  throw error;
}
