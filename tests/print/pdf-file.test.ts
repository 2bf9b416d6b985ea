import fc from 'fast-check';
import {expect, test} from 'vitest';
import {openPdf, pageObjects} from '../../src/print/pdf-file.ts';
import {PdfSyntaxError} from '../../src/print/pdf-syntax.ts';
import {pdfOf} from './pdf-of.ts';

const open = (text: string) => openPdf(Buffer.from(text, 'latin1'));

const nested = pdfOf(
  '<</Type /Catalog /Pages 2 0 R>>',
  '<</Type /Pages /Kids [3 0 R 6 0 R]>>',
  '<</Type /Pages /Kids [5 0 R 4 0 R]>>',
  '<</Type /Page>>',
  '<</Type /Page>>',
  '<</Type /Page /Width 7 0 R /Gone 9 0 R>>',
  '42',
);

test('pages are found in the order of the tree, not of the file', () => {
  expect(pageObjects(open(nested))).toEqual([5, 4, 6]);
});

test('a reference leads to its object, and to null when there is none', () => {
  const pdf = open(nested);
  const page = pdf.dictionary({object: 6});
  expect(pdf.resolve(page.get('/Width'))).toBe(42);
  expect(pdf.resolve(page.get('/Gone'))).toBeNull();
  expect([...pdf.dictionary(page.get('/Width')), ...pdf.array(page.get('/Width'))]).toEqual([]);
});

test.each<[string, string]>([
  ['nothing', ''],
  ['no PDF', 'a picture of a swatch'],
  ['a table packed into a stream, as PDF 1.5 allows', nested.replace('xref\n0 8', '8 0 obj')],
  ['a file that was changed after it was written', nested.replace('/Root', '/Prev 12\n/Root')],
  ['a table that leads elsewhere', nested.replace(/\d{10} 00000 n/, '0000000003 00000 n')],
])('%s is told apart', (_, text) => {
  expect(() => pageObjects(open(text))).toThrow(PdfSyntaxError);
});

test('pages that hold themselves do not go on for ever', () => {
  expect(() =>
    pageObjects(open(pdfOf('<</Type /Catalog /Pages 2 0 R>>', '<</Type /Pages /Kids [2 0 R]>>'))),
  ).toThrow(PdfSyntaxError);
});

test('a file cut short anywhere is told, and in one way only', () => {
  fc.assert(
    fc.property(fc.nat({max: nested.length - 2}), (length) => {
      expect(() => pageObjects(open(nested.slice(0, length)))).toThrow(PdfSyntaxError);
    }),
  );
});
