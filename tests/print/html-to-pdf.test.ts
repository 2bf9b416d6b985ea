import {describe, expect, test} from 'vitest';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import type {PrintTrouble} from '../../src/print/print-job.ts';
import {OperationalError} from '../../src/support/operational-error.ts';
import {readWithPdfJs} from './read-with-pdfjs.ts';
import {anchorsOf, documentOf, fontFace, serif} from './sample-binder.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

/** Prints sheets and returns the troubles. */
async function troublesOf(
  sheets: readonly string[],
  parts: {css?: string; head?: string} = {},
): Promise<readonly PrintTrouble[]> {
  const job = {html: documentOf(sheets, parts), anchors: anchorsOf(sheets.length)};
  return (await printPdf(browser(), job, {tagged: true})).troubles;
}

const paragraph = `<p>${'Slip the first stitch of every row purlwise. '.repeat(400)}</p>`;
const word = 'Wooool'.repeat(40);
const square = (size: string) =>
  `<svg xmlns='http://www.w3.org/2000/svg' width='${size}' height='20'><rect width='20' height='20'/></svg>`;
const picture = (size: string) => `data:image/svg+xml,${encodeURIComponent(square(size))}`;

describe('where each sheet begins', () => {
  const sheets = ['<h1>Contents</h1>', `<h1>S-01</h1>${paragraph}`, '<h1>S-02</h1>', '', '<p>last</p>'];

  test.each([true, false])('is found for every anchor, links or not, tagged: %s', async (tagged) => {
    const job = {html: documentOf(sheets), anchors: anchorsOf(5)};
    const {pdf, pageCount, starts, troubles} = await printPdf(browser(), job, {tagged});
    const facts = await readWithPdfJs(pdf);
    const pageWith = (text: string) => facts.texts.findIndex((page) => page.includes(text));
    const second = pageWith('S-02');
    expect(second).toBeGreaterThan(2);
    expect(Object.fromEntries(starts)).toEqual({
      'sheet-1': 0,
      'sheet-2': pageWith('S-01'),
      'sheet-3': second,
      'sheet-4': second + 1,
      'sheet-5': pageWith('last'),
    });
    expect(pageCount).toBe(facts.sizes.length);
    expect(troubles).toEqual([]);
  });

  test('leaves no trace of how it was found: no link, no words, no element', async () => {
    const {pdf} = await printPdf(
      browser(),
      {html: documentOf(['<p>one</p>', '<p>two</p>']), anchors: anchorsOf(2)},
      {tagged: true},
    );
    const facts = await readWithPdfJs(pdf);
    expect(facts.links).toEqual([]);
    expect(facts.roles.Link).toBeUndefined();
    expect(facts.texts.join('|')).toBe('one|two');
  });

  test('works for ids with letters that addresses write otherwise', async () => {
    const html = documentOf(['a', 'b']).replace('id="sheet-2"', 'id="Grün & 1/2 (b)%"');
    const {starts} = await printPdf(
      browser(),
      {html, anchors: ['sheet-1', 'Grün & 1/2 (b)%']},
      {tagged: false},
    );
    expect([...starts.values()]).toEqual([0, 1]);
  });

  test('an anchor without an element is a bug', async () => {
    await expect(
      printPdf(browser(), {html: documentOf(['a']), anchors: ['sheet-9']}, {tagged: false}),
    ).rejects.toThrow(/^bug: .*sheet-9/);
  });

  test('printing without bookmarks and structure gives the same pages', async () => {
    const job = {html: documentOf(sheets), anchors: anchorsOf(5)};
    const [draft, final] = [
      await printPdf(browser(), job, {tagged: false}),
      await printPdf(browser(), job, {tagged: true}),
    ];
    expect(draft.starts).toEqual(final.starts);
    const [draftFacts, finalFacts] = [await readWithPdfJs(draft.pdf), await readWithPdfJs(final.pdf)];
    expect(draftFacts.texts).toEqual(finalFacts.texts);
    expect([draftFacts.outline.length, finalFacts.outline.length]).toEqual([0, 3]);
    expect([Object.keys(draftFacts.roles).length > 0, Object.keys(finalFacts.roles).length > 0]).toEqual([
      false,
      true,
    ]);
  });
});

describe('paper', () => {
  // ISO 216:2007, table 1, and ANSI/ASME Y14.1 (Letter, 8.5 × 11 in of 25.4 mm). Chromium lays out in whole pixels of
  // CSS, 1/96 in or 0.26 mm; the standard itself allows paper to be 1.5 mm off.
  const pixel = 25.4 / 96;
  test.each([
    ['A4', '210mm 297mm', 210, 297],
    ['A5', '148mm 210mm', 148, 210],
    ['Letter', '215.9mm 279.4mm', 215.9, 279.4],
    ['A4 across', '297mm 210mm', 297, 210],
  ])('%s', async (_, size, width, height) => {
    const job = {html: documentOf(['a', 'b'], {css: `@page{size:${size}}`}), anchors: anchorsOf(2)};
    const {sizes} = await readWithPdfJs((await printPdf(browser(), job, {tagged: true})).pdf);
    expect(sizes).toHaveLength(2);
    for (const page of sizes) {
      expect(Math.abs(page.width - width)).toBeLessThanOrEqual(pixel);
      expect(Math.abs(page.height - height)).toBeLessThanOrEqual(pixel);
    }
  });

  test('sheets of several sizes in one file', async () => {
    const css = '@page wide{size:297mm 210mm;margin:0}#sheet-2{page:wide}';
    const job = {html: documentOf(['a', 'b', 'c'], {css}), anchors: anchorsOf(3)};
    const {sizes} = await readWithPdfJs((await printPdf(browser(), job, {tagged: true})).pdf);
    expect(sizes.map(({width, height}) => width > height)).toEqual([false, true, false]);
  });
});

describe('a box that does not fit is found', () => {
  test.each<[string, string, string]>([
    ['a word that cannot break', `<p>before</p><p>${word}</p>`, 'Wooool'],
    [
      'a line that may not',
      `<p style="white-space:nowrap">${'Knit two together. '.repeat(20)}</p>`,
      'Knit two together.',
    ],
    ['a wide table', `<table><tr>${'<td>Stitches</td>'.repeat(60)}</tr></table>`, 'Stitches'],
    ['a wide picture', `<img alt="Front of S-07" src="${picture('900')}">`, 'Front of S-07'],
    ['a wide drawing', square('900'), '<svg>'],
    ['a box with its place given', '<div style="position:absolute;left:200mm">aside</div>', 'aside'],
    ['a box that is turned', '<div style="width:170mm;transform:translateX(60mm)">moved</div>', 'moved'],
    ['a box within a box that clips', `<div style="overflow:hidden">${word}</div>`, 'Wooool'],
    [
      'words in a drawing',
      '<svg width="300" height="20"><text x="200" y="15">Cable cast-on, both edges</text></svg>',
      'Cable cast-on, both edges',
    ],
  ])('%s', async (_, sheet, text) => {
    const troubles = await troublesOf(['<p>fine</p>', `<div style="position:relative">${sheet}</div>`]);
    expect(troubles.map(({kind, anchor}) => ({kind, anchor}))).toContainEqual({
      kind: 'overflow',
      anchor: 'sheet-2',
    });
    expect(troubles.every(({kind}) => kind === 'overflow')).toBe(true);
    expect(troubles[0]?.detail).toMatch(/^`.*` is (a little|\d+ mm) too wide$/);
    expect(troubles[0]?.detail).toContain(text);
  });

  test.each<[string, string, string]>([
    [
      'words in a box of fixed height',
      `<div style="height:20mm;width:60mm;overflow:clip">${paragraph}</div>`,
      'Slip the first stitch',
    ],
    [
      'one line too many',
      '<div style="height:30px;font-size:15px;line-height:15px;overflow:hidden">one<br>two<br>three</div>',
      'one two three'.replaceAll(' ', ''),
    ],
  ])('%s', async (_, sheet, text) => {
    const troubles = await troublesOf([sheet]);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({kind: 'overflow', anchor: 'sheet-1'});
    expect(troubles[0]?.detail).toMatch(/ mm too tall$/);
    expect(troubles[0]?.detail).toContain(text);
  });

  test.each<[string, string, string?]>([
    ['ordinary prose', paragraph],
    ['a table as wide as the page', '<table style="width:100%"><tr><td>a<td>b</table>'],
    ['a picture as wide as the page', `<img alt="x" style="width:100%" src="${picture('900')}">`],
    ['a full line with a long word that may break', `<p style="overflow-wrap:anywhere">${word}</p>`],
    [
      'a box that holds its lines exactly',
      '<div style="height:45px;font-size:15px;line-height:15px;overflow:hidden">one<br>two<br>three</div>',
    ],
    [
      'words that end within their drawing',
      '<svg width="300" height="20"><text x="0" y="15">Cable</text></svg>',
    ],
    [
      'words for the ear only',
      '<p style="position:absolute;width:1px;height:1px;clip-path:inset(50%);overflow:visible">.</p>',
    ],
  ])('%s fits', async (_, sheet) => {
    expect(await troublesOf([sheet])).toEqual([]);
  });

  test('each sheet is measured by the pages it is printed on', async () => {
    const box = (millimetres: number) => `<div style="width:${millimetres}mm;height:5mm">wide</div>`;
    const css = `
      @page wide{size:297mm 210mm;margin:0}
      @page mirrored{size:A4}
      @page mirrored:left{margin:76px 96px 76px 76px}
      @media print{@page narrow{margin:0 60mm}}
      @media screen{@page{margin:0 90mm}}
      #sheet-2,#sheet-3{page:wide}#sheet-4{page:narrow}#sheet-5{page:mirrored}`;
    // Content widths: A4 less 2 × 76 px (40.2 mm) is 169.8 mm; 297 mm; 210 − 120 = 90 mm; A4 less 172 px is 164.5 mm.
    const fitting = await troublesOf([box(169), box(296), box(296), box(89), box(164)], {css});
    expect(fitting).toEqual([]);
    const tooWide = await troublesOf([box(171), box(298), box(299), box(91), box(166)], {css});
    expect(tooWide.map(({anchor}) => anchor).sort()).toEqual(anchorsOf(5));
  });

  test('a wider page within a sheet is found, since the sheet cuts it off', async () => {
    const css = '@page chart{size:297mm 210mm;margin:0}.chart{page:chart}';
    const sheet = '<p>text</p><div class="chart"><div style="width:290mm">chart</div></div>';
    expect(await troublesOf([sheet], {css})).toMatchObject([{kind: 'overflow', anchor: 'sheet-1'}]);
  });

  test('looking for it leaves the pages as they are', async () => {
    const css = '@page wide{size:297mm 210mm;margin:0}#sheet-2{page:wide}';
    const job = {html: documentOf([paragraph, paragraph], {css}), anchors: anchorsOf(2)};
    const [looked, not] = [
      await printPdf(browser(), job, {tagged: true}),
      await printPdf(browser(), job, {tagged: false}),
    ];
    expect(looked.starts).toEqual(not.starts);
  });
});

describe('what is missing is found', () => {
  test.each<[string, string, string]>([
    [
      'a picture whose bytes are none',
      '<img alt="Front of S-07" src="data:image/jpeg;base64,AAAA">',
      'Front of S-07',
    ],
    ['a picture without a source', '<img alt="Back of S-07">', 'Back of S-07'],
    [
      'a picture in a drawing',
      '<svg width="40" height="40"><image href="data:image/png;base64,AAAA" width="9" height="9"/></svg>',
      'data:image/png;base64,AAAA',
    ],
  ])('%s', async (_, sheet, name) => {
    expect(await troublesOf(['', sheet])).toEqual([
      {kind: 'missing picture', anchor: 'sheet-2', detail: `\`${name}\``},
    ]);
  });

  test('a picture that is there is not', async () => {
    expect(
      await troublesOf([
        `<img alt="x" src="${picture('20')}"><svg width="40" height="40"><image href="${picture('20')}" width="9" height="9"/></svg>`,
      ]),
    ).toEqual([]);
  });

  test('a font that cannot be read, whether or not it is used', async () => {
    const css =
      '@font-face{font-family:"Torn";font-weight:600;src:url(data:font/woff2;base64,AAAA) format("woff2")}';
    expect(await troublesOf(['<p>text</p>'], {css})).toEqual([
      {kind: 'missing font', anchor: null, detail: '`Torn 600 normal`'},
    ]);
  });

  test('letters that no font of the layout has, with the sheet they stand on', async () => {
    const troubles = await troublesOf(['<p>fine</p>', '<p>Row 1: <b>k2, ⅜ way</b></p>']);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({kind: 'missing glyph', anchor: 'sheet-2'});
    expect(troubles[0]?.detail).toMatch(
      /^`k2, ⅜ way` has letters that no font of the layout has; `.+` of this computer was used$/,
    );
  });

  test('letters in a running head that no font of the layout has', async () => {
    const css = '@page{@top-left{content:"⅜";font-family:"Source Serif 4"}}';
    expect(await troublesOf(['<p>fine</p>'], {css})).toMatchObject([
      {
        kind: 'missing glyph',
        anchor: null,
        detail: expect.stringMatching(/^a running head or foot has letters/),
      },
    ]);
  });

  test('a font of the layout that calls itself otherwise is no stranger', async () => {
    const css = `${fontFace('Symbols', '@fontsource/dejavu-sans/files/dejavu-sans-latin-400-normal.woff2')}p{font-family:"Symbols"}`;
    expect(await troublesOf(['<p>⅜ way</p>'], {css})).toEqual([]);
  });

  test('a document that brings no fonts is not blamed for using those of the computer', async () => {
    const html = documentOf(['<p>⅜</p>']).replace(serif, '');
    expect((await printPdf(browser(), {html, anchors: anchorsOf(1)}, {tagged: true})).troubles).toEqual([]);
  });

  test('a link that leads to nothing', async () => {
    const sheet =
      '<p><a href="#sheet-1">S-01</a> <a href="#sheet-9">S-09</a> <a href="https://example.org/">a site</a></p>';
    expect(await troublesOf([sheet])).toEqual([
      {kind: 'broken link', anchor: 'sheet-1', detail: '`#sheet-9`'},
    ]);
  });
});

test('fonts that only a running head uses are there at the first print', async () => {
  const css = `${fontFace('DejaVu Sans', '@fontsource/dejavu-sans/files/dejavu-sans-latin-400-normal.woff2')}
    @page{@top-left{content:"Round 1";font-family:"DejaVu Sans"}}`;
  expect(await troublesOf(['<p>text</p>'], {css})).toEqual([]);
});

test('a page that leads the browser elsewhere is printed as it stands, or not at all', async () => {
  for (const address of [
    'http://127.0.0.1:9/',
    'data:text/html,gone',
    'about:srcdoc',
    'about:blank',
    'file:///etc/hostname',
  ]) {
    const html = documentOf(['<p>stays</p>'], {
      head: `<meta http-equiv="refresh" content="0;url=${address}">`,
    });
    const outcome = await printPdf(browser(), {html, anchors: anchorsOf(1)}, {tagged: true}).catch(
      (error: unknown) => error,
    );
    if (outcome instanceof Error) expect(outcome, address).toBeInstanceOf(OperationalError);
    else
      expect(await readWithPdfJs((outcome as {pdf: Uint8Array}).pdf), address).toMatchObject({
        texts: ['stays'],
      });
  }
});
