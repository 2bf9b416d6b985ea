import {expect, test} from 'vitest';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {type Counts, settle} from '../../src/print/print-settled.ts';
import {readWithPdfJs} from './read-with-pdfjs.ts';
import {anchorsOf, documentOf} from './sample-binder.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

const lengths = [400, 3000, 100, 1500];
const anchors = anchorsOf(lengths.length + 1);

/** Contents of one line an item, each with its number of pages, and the items. */
function render(counts: Counts | null): string {
  const lines = lengths.map(
    (_, index) => `<p>Item ${index + 1}: ${counts?.get(`sheet-${index + 2}`) ?? '?'} pages</p>`,
  );
  const items = lengths.map((words, index) => `<h1>Item ${index + 1}</h1><p>${'purl '.repeat(words)}</p>`);
  return documentOf([lines.join(''), ...items]);
}

test('the numbers printed in the contents are those of the pages, and the next build needs one print', async () => {
  let prints = 0;
  const binder = {
    render,
    usesCounts: () => true,
    print: (html: string, options: {readonly tagged: boolean}) => {
      prints++;
      return printPdf(browser(), {html, anchors}, options);
    },
    count: (
      _: string,
      {starts, pageCount}: {readonly starts: ReadonlyMap<string, number>; readonly pageCount: number},
    ) =>
      new Map(
        anchors.map((anchor, at) => [
          anchor,
          (starts.get(anchors[at + 1] ?? '') ?? pageCount) - (starts.get(anchor) ?? 0),
        ]),
      ),
  };
  const {printed, counts} = await settle(binder, null);
  expect(prints).toBe(2);
  expect(printed.troubles).toEqual([]);

  const {texts} = await readWithPdfJs(printed.pdf);
  const begins = lengths.map((_, index) =>
    texts.findIndex((text, page) => page > 0 && text.startsWith(`Item ${index + 1}\n`)),
  );
  const pages = begins.map((begin, index) => (begins[index + 1] ?? texts.length) - begin);
  expect(Math.max(...pages)).toBeGreaterThan(2);
  expect(texts[0]?.trim().split(/\n+/)).toEqual(
    pages.map((count, index) => `Item ${index + 1}: ${count} pages`),
  );

  const again = await settle(binder, counts);
  expect(prints).toBe(3);
  expect(again.printed.starts).toEqual(printed.starts);
});
