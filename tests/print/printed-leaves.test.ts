import {describe, expect, test} from 'vitest';
import {finishPdf} from '../../src/print/finish-pdf.ts';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {readPdfFacts} from '../../src/print/pdf-facts.ts';
import {openPdf} from '../../src/print/pdf-file.ts';
import {PdfSyntaxError} from '../../src/print/pdf-syntax.ts';
import type {LeafNotes} from '../../src/print/print-job.ts';
import {type PrintedLeaf, readPrintedLeaves} from '../../src/print/printed-leaves.ts';
import {pdfOf} from './pdf-of.ts';
import {anchorsOf, documentOf, fontFace} from './sample-binder.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

const picture = (colour: string) =>
  `<img alt="Front" width="60" src="data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'%3E%3Cpath fill='${colour}' d='M0 0h9v7.3H0z'/%3E%3C/svg%3E">`;
const table = `<table><caption>Counts</caption><tr><th scope="col">Place</th><td>20½</td></tr></table>`;
const items = {
  'S-01': `<h1>Ribs</h1><p>Worked flat; see <a href="#sheet-3">S-03</a>.</p>${table}`,
  'S-02': `<h1>Cables</h1><p>Cross in front.</p><p style="break-before:page">Second page.</p>${picture('green')}`,
  'S-03': `<h1>Lace</h1><p>Hold it up to the <a href="#sheet-1">light</a>.</p>${table}${picture('navy')}`,
};

interface Wishes {
  readonly sides?: 'single' | 'duplex';
  readonly notes?: LeafNotes;
  readonly css?: string;
  /** The pages to print; all when left out. */
  readonly pages?: readonly number[];
}

/** The sheets printed as one file; a sheet's pages are told apart by their forced breaks. */
async function print(
  sheets: Readonly<Record<string, string>>,
  {sides = 'single', notes = {drafts: [], gone: []}, css = '', pages}: Wishes = {},
): Promise<Uint8Array> {
  // As in the layouts: a link looks like the words around it.
  const html = documentOf(Object.values(sheets), {css: `a{color:inherit;text-decoration:none}${css}`});
  const job = {html, anchors: anchorsOf(Object.keys(sheets).length)};
  const {pdf} = await printPdf(browser(), job, {tagged: true, ...(pages && {pages})});
  const labels = Object.entries(sheets).flatMap(([name, text]) => {
    const count = text.split('break-before:page').length;
    return Array.from({length: count}, (_, page) => `${name} · ${page + 1} of ${count}`);
  });
  return finishPdf(pdf, {
    title: 'Binder',
    author: '',
    subject: '',
    language: 'en-GB',
    date: '2026-09-28',
    labels: pages ? pages.map((page) => labels[page] ?? '') : labels,
    sides,
    notes,
  });
}

async function leaves(...wishes: Parameters<typeof print>): Promise<ReadonlyMap<string, string>> {
  return byLeaf(readPrintedLeaves(await print(...wishes)).leaves);
}

let base: ReturnType<typeof leaves> | undefined;
/** The leaves of `items`, printed once for all tests. */
function unchanged(): ReturnType<typeof leaves> {
  base ??= leaves(items);
  return base;
}

function byLeaf(list: readonly PrintedLeaf[]): ReadonlyMap<string, string> {
  return new Map(list.map(({leaf, fingerprint}) => [leaf, fingerprint]));
}

function differing(a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): readonly string[] {
  return [...b].filter(([leaf, fingerprint]) => a.get(leaf) !== fingerprint).map(([leaf]) => leaf);
}

describe('the leaves of a printed file', () => {
  test('each has its number and a fingerprint of its own', async () => {
    const printed = await unchanged();
    expect([...printed.keys()]).toEqual(['S-01 · 1 of 1', 'S-02 · 1 of 2', 'S-02 · 2 of 2', 'S-03 · 1 of 1']);
    expect(new Set(printed.values()).size).toBe(4);
    for (const fingerprint of printed.values()) expect(fingerprint).toMatch(/^[0-9a-f]{16}$/);
  });

  test('a changed line changes the leaf it stands on, and no other', async () => {
    const edited = {...items, 'S-02': items['S-02'].replace('Second page.', 'Second page, mended.')};
    expect(differing(await unchanged(), await leaves(edited))).toEqual(['S-02 · 2 of 2']);
  });

  test('pages, pictures and fonts that come before it change no leaf', async () => {
    const before = `<h1>New</h1>${picture('red')}<p style="font-family:Mono">Other.</p>${'<p style="break-before:page">More</p>'.repeat(5)}`;
    const mono = fontFace('Mono', '@fontsource/ibm-plex-mono/files/ibm-plex-mono-latin-400-normal.woff2');
    const more = await leaves({'S-00': before, ...items}, {css: mono});
    expect(differing(await unchanged(), more)).toEqual(
      Array.from({length: 6}, (_, page) => `S-00 · ${page + 1} of 6`),
    );
  });

  test('links that lead elsewhere, and what is only said in the structure, change no leaf', async () => {
    const edited = {
      ...items,
      'S-03': items['S-03']
        .replace('<a href="#sheet-1">light</a>', '<a>light</a>')
        .replace('scope="col"', ''),
    };
    expect(differing(await unchanged(), await leaves(edited))).toEqual([]);
  });

  test('some pages printed alone are the same leaves, under their own numbers', async () => {
    const whole = await unchanged();
    const part = await print(items, {pages: [0, 2]});
    expect(byLeaf(readPrintedLeaves(part).leaves)).toEqual(
      new Map([...whole].filter(([leaf]) => leaf === 'S-01 · 1 of 1' || leaf === 'S-02 · 2 of 2')),
    );
    expect(readPdfFacts(part).pages.map(({label}) => label)).toEqual(['S-01 · 1 of 1', 'S-02 · 2 of 2']);
  });

  test('with two sides a leaf is front and back, named by its front', async () => {
    const single = await unchanged();
    const duplex = await leaves(items, {sides: 'duplex'});
    expect([...duplex.keys()]).toEqual(['S-01 · 1 of 1', 'S-02 · 2 of 2']);
    const backEdited = await leaves(
      {...items, 'S-02': items['S-02'].replace('Cross in front', 'Cross behind')},
      {sides: 'duplex'},
    );
    expect(differing(duplex, backEdited)).toEqual(['S-01 · 1 of 1']);
    expect([...single.values()]).not.toContain(duplex.get('S-01 · 1 of 1'));
  });

  test('drafts and leaves that go are noted in the file', async () => {
    const notes = {drafts: [2], gone: ['S-02 · 3 of 3', 'Änderung · 1 of 1']};
    const {leaves: printed, gone} = readPrintedLeaves(await print(items, {notes}));
    expect(printed.filter(({isDraft}) => isDraft).map(({leaf}) => leaf)).toEqual(['S-02 · 2 of 2']);
    expect(gone).toEqual(notes.gone);
    const duplex = readPrintedLeaves(await print(items, {notes, sides: 'duplex'})).leaves;
    expect(duplex.map(({isDraft}) => isDraft)).toEqual([false, true]);
  });
});

test('a file without leaf numbers is told', () => {
  const foreign = pdfOf(
    '<</Type /Catalog /Pages 2 0 R>>',
    '<</Type /Pages /Kids [3 0 R]>>',
    '<</Type /Page>>',
  );
  expect(openPdf(Buffer.from(foreign)).offsets.size).toBe(3);
  expect(() => readPrintedLeaves(Buffer.from(foreign))).toThrow(PdfSyntaxError);
});
