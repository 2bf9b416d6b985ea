import {describe, expect, test} from 'vitest';
import {withBrowser} from '../../src/print/browser.ts';
import {finishPdf} from '../../src/print/finish-pdf.ts';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {readPdfFacts} from '../../src/print/pdf-facts.ts';
import type {PdfDetails} from '../../src/print/print-job.ts';
import {readWithPdfJs} from './read-with-pdfjs.ts';
import {anchorsOf, documentOf} from './sample-binder.ts';
import {foundBrowser, sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

const sheets = [
  '<h1>Contents</h1><ol><li><a href="#sheet-2">S-01 Ribs</a></li></ol>',
  `<h1>S-01 Ribs</h1><h2>Gauge</h2><table><caption>Counts</caption><thead><tr><th scope="col">Place</th><th scope="col">Stitches</th></tr></thead>
   <tbody><tr><th scope="row">top</th><td>20½</td></tr></tbody></table>
   <figure><img alt="Front of the swatch" src="data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/%3E"><figcaption>Front</figcaption></figure>`,
  '<h1>S-02 Cables</h1><p>Cross <em>in front</em>, <strong>never</strong> behind; see <a href="#sheet-2">S-01</a> and <a href="https://example.org/cables">a page</a>.</p>',
];
const job = {html: documentOf(sheets), anchors: anchorsOf(3)};
const details: PdfDetails = {
  title: 'Certificate in Hand Knitting – Part Two (round 1)',
  author: 'Marit Haldane-Roe',
  subject: 'FG-2-0417 \\ “Garment Techniques”',
  language: 'en-GB',
  date: '2026-09-28',
  sides: 'single',
  notes: {drafts: [], gone: []},
  labels: ['Contents · 1 of 1', 'S-01 · 1 of 1', 'S-02 (draft) · 1 of 1'],
};

async function printed(): Promise<Uint8Array> {
  return (await printPdf(browser(), job, {tagged: true})).pdf;
}

describe('a finished file, as another reader sees it', () => {
  test('labels, details and how to show it', async () => {
    const facts = await readWithPdfJs(finishPdf(await printed(), details));
    expect(facts.labels).toEqual(details.labels);
    expect(facts.info).toMatchObject({
      Title: details.title,
      Author: details.author,
      Subject: details.subject,
      Creator: 'Swatchleaf',
      CreationDate: 'D:20260928120000Z',
      ModDate: 'D:20260928120000Z',
      Language: 'en-GB',
    });
    expect(facts.info.Producer).toBeUndefined();
    expect(facts.viewer).toMatchObject({DisplayDocTitle: true, PrintScaling: 'None'});
    expect(facts.pageMode).toBe('UseOutlines');
  });

  test('bookmarks, destinations, links, words and structure are those that were printed', async () => {
    const before = await printed();
    const [raw, finished] = [await readWithPdfJs(before), await readWithPdfJs(finishPdf(before, details))];
    expect(finished.outline).toEqual([
      {title: 'Contents', page: 0, depth: 1},
      {title: 'S-01 Ribs', page: 1, depth: 1},
      {title: 'Gauge', page: 1, depth: 2},
      {title: 'S-02 Cables', page: 2, depth: 1},
    ]);
    expect(Object.fromEntries(finished.destinations)).toEqual({'sheet-1': 0, 'sheet-2': 1, 'sheet-3': 2});
    expect(finished.links).toEqual(['#sheet-2', '#sheet-2', 'https://example.org/cables']);
    expect(finished.texts).toEqual(raw.texts);
    expect(finished.sizes).toEqual(raw.sizes);
    expect(finished.roles).toMatchObject({
      H1: 3,
      H2: 1,
      Table: 1,
      TR: 2,
      TH: 3,
      TD: 1,
      Figure: 1,
      Link: 3,
      LI: 1,
      Caption: 2,
    });
  });

  test('kinds of element that only PDF 2.0 knows are mapped to those that every reader knows', async () => {
    const before = await printed();
    const [raw, finished] = [await readWithPdfJs(before), await readWithPdfJs(finishPdf(before, details))];
    expect([raw.roles.Em, raw.roles.Strong]).toEqual([1, 1]);
    expect([finished.roles.Em, finished.roles.Strong, finished.roles.Span]).toEqual([
      undefined,
      undefined,
      2,
    ]);
  });

  test('nothing tells which browser or when', async () => {
    const bytes = Buffer.from(finishPdf(await printed(), details)).toString('latin1');
    expect(bytes).not.toMatch(/Chrom|Skia|Mozilla/);
    expect(bytes.match(/D:\d{8}/g)).toEqual(['D:20260928', 'D:20260928']);
  });
});

test('two prints of one document have the same bytes when they are finished', async () => {
  const first = finishPdf(await printed(), details);
  // Dates in a PDF count seconds: wait until they differ, or the test could not fail.
  const began = Math.floor(Date.now() / 1000);
  while (Math.floor(Date.now() / 1000) <= began + 1) await new Promise((resolve) => setTimeout(resolve, 50));
  const [raw, second] = [await printed(), finishPdf(await printed(), details)];
  expect(Buffer.from(second).equals(Buffer.from(first))).toBe(true);
  expect(readPdfFacts(raw).created).not.toBe(readPdfFacts(first).created);
});

test('what was printed before on the same page of the browser makes no difference', async () => {
  const css = '@page{size:200mm 100mm;margin:30mm} p{columns:2;font:30px serif} :root{--text-width:90px}';
  const other = {html: documentOf([...sheets, ...sheets], {css}), anchors: anchorsOf(6)};
  await withBrowser(foundBrowser, async (fresh) => {
    const print = async () => finishPdf((await printPdf(fresh, job, {tagged: true})).pdf, details);
    const first = await print();
    await printPdf(fresh, other, {tagged: true});
    expect(Buffer.from(await print()).equals(Buffer.from(first))).toBe(true);
  });
});

describe('the ids of header cells, which Chromium counts differently from print to print', () => {
  const idsIn = (bytes: Uint8Array, pattern: RegExp) =>
    [...Buffer.from(bytes).toString('latin1').matchAll(pattern)].map(([, id]) => id);

  test('make no difference to the finished file', async () => {
    const before = await printed();
    const other = Buffer.from(before)
      .toString('latin1')
      .replace(/\(node(\d{8})\)/g, (_, id: string) => `(node${99_999_999 - Number(id)})`);
    expect(other).not.toBe(Buffer.from(before).toString('latin1'));
    expect(finishPdf(Buffer.from(other, 'latin1'), details)).toEqual(finishPdf(before, details));
  });

  test('still join each cell with its headers', async () => {
    const finished = finishPdf(await printed(), details);
    // The one cell of the table names the header of its column and that of its row.
    expect(idsIn(finished, /\/ID \((node\d+)\)/g)).toEqual(['node00000001', 'node00000002']);
    expect(idsIn(finished, /\/Headers \[([^\]]+)\]/g)).toEqual(['(node00000001) (node00000002)']);
    const [tree = ''] = idsIn(finished, /\/IDTree <<\/Names \[([^\]]*)\]/g);
    const keys = [...tree.matchAll(/<([0-9A-F]+)> \d+ 0 R/g)].map(([, hex = '']) =>
      Buffer.from(hex, 'hex').toString(),
    );
    expect(keys).toEqual(['node00000001', 'node00000002']);
  });
});

test('a file without bookmarks opens without a panel for them', async () => {
  const {pdf} = await printPdf(
    browser(),
    {html: documentOf(['<p>a tag</p>']), anchors: anchorsOf(1)},
    {tagged: false},
  );
  const facts = await readWithPdfJs(finishPdf(pdf, {...details, labels: ['Tags · 1 of 1']}));
  expect(facts.pageMode).toBe('UseNone');
  expect(facts.labels).toEqual(['Tags · 1 of 1']);
});

test('a label too many or too few is a bug', async () => {
  const pdf = await printed();
  expect(() => finishPdf(pdf, {...details, labels: ['one']})).toThrow('bug: 1 labels for 3 pages');
});

test('our own reader finds what the other one does', async () => {
  const bytes = finishPdf(await printed(), details);
  const [ours, theirs] = [readPdfFacts(bytes), await readWithPdfJs(bytes)];
  expect(ours.pages.map(({label}) => label)).toEqual(theirs.labels);
  expect(ours.pages.map(({width, height}) => ({width, height}))).toEqual(theirs.sizes);
  expect([...ours.destinations]).toEqual([...theirs.destinations]);
  expect(ours.links.map(({target}) => target)).toEqual(theirs.links);
  expect(ours.dangling).toEqual([]);
  expect({title: ours.title, author: ours.author, subject: ours.subject, language: ours.language}).toEqual({
    title: details.title,
    author: details.author,
    subject: details.subject,
    language: details.language,
  });
  const flat = (entries: typeof ours.outline, depth: number): unknown[] =>
    entries.flatMap(({title, page, children}) => [{title, page, depth}, ...flat(children, depth + 1)]);
  expect(flat(ours.outline, 1)).toEqual(theirs.outline);
  expect(ours.fonts).toEqual([{name: 'SourceSerif4-Regular', embedded: true}]);
  for (const role of ['H1', 'H2', 'Table', 'TR', 'TH', 'TD', 'Figure', 'Link', 'LI', 'Caption']) {
    expect(ours.tags.get(role), role).toBe(theirs.roles[role]);
  }
});

/** The same file with `count` more objects, which nothing refers to. */
function withMoreObjects(pdf: Uint8Array, count: number): Uint8Array {
  const text = Buffer.from(pdf).toString('latin1');
  const table = text.lastIndexOf('xref\n', text.lastIndexOf('startxref') - 1);
  const [, size = ''] = /^xref\n0 (\d+)\n/.exec(text.slice(table)) ?? [];
  const entries = text.slice(table, text.indexOf('trailer', table)).split('\n').slice(2, -1);
  let body = text.slice(0, table);
  for (let object = Number(size); object < Number(size) + count; object++) {
    entries.push(`${String(body.length).padStart(10, '0')} 00000 n `);
    body += `${object} 0 obj\n<<>>\nendobj\n`;
  }
  const trailer = text.slice(text.indexOf('trailer', table), text.lastIndexOf('startxref'));
  const newTable = `xref\n0 ${entries.length}\n${entries.join('\n')}\n${trailer.replace(/\/Size \d+/, `/Size ${entries.length}`)}`;
  return Buffer.from(`${body}${newTable}startxref\n${body.length}\n%%EOF\n`, 'latin1');
}

// Some 1,500 leaves have as many; a function cannot be called with each of them as an argument.
test('a file of 200,000 objects is finished as a small one is', async () => {
  const large = finishPdf(withMoreObjects(await printed(), 200_000), details);
  expect((await readWithPdfJs(large)).labels).toEqual(details.labels);
});
