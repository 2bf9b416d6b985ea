import {deflateSync} from 'node:zlib';
import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {drawingDigester} from '../../src/print/drawing-digest.ts';
import {openPdf, pageObjects} from '../../src/print/pdf-file.ts';
import {PdfSyntaxError} from '../../src/print/pdf-syntax.ts';
import {pdfOf} from './pdf-of.ts';

const stream = (data: string, entries = '') =>
  `<<${entries}/Length ${data.length}>>\nstream\n${data}\nendstream`;

function packed(data: string, entries = ''): string {
  return stream(
    deflateSync(Buffer.from(data, 'latin1')).toString('latin1'),
    `${entries}/Filter /FlateDecode`,
  );
}

/** One page: text, a picture, a drawing of its own with text in it, and a graphics state. */
interface Sample {
  readonly names?: readonly [font: string, picture: string, form: string, state: string];
  readonly content?: string;
  readonly font?: string;
  readonly picture?: string;
  readonly form?: string;
  readonly box?: string;
  readonly state?: string;
  /** Objects between those of the page, as other pages would have them. */
  readonly others?: number;
}

function fingerprint({
  names = ['F5', 'X12', 'X13', 'G3'],
  content = 'q /G gs BT /F 12 Tf 1 0 0 -1 10 20 Tm <0008> Tj (a /F1 b) Tj ET /P Do /D Do Q',
  font = 'AAAAAA+SourceSerif4-Regular',
  picture = 'pixels',
  form = 'BT /F 9 Tf <0101> Tj ET',
  box = '0 0 595 842',
  state = '/ca 1',
  others = 0,
}: Sample = {}): string {
  const named = (text: string) =>
    ['F', 'P', 'D', 'G'].reduce((all, name, index) => all.replaceAll(`/${name} `, `/${names[index]} `), text);
  const first = 4 + others;
  const [fontAt, pictureAt, formAt, stateAt, contentAt, descriptorAt] = [0, 1, 2, 3, 4, 5].map(
    (each) => first + each,
  );
  const resources = `<</Font <</${names[0]} ${fontAt} 0 R>>/XObject <</${names[1]} ${pictureAt} 0 R/${names[2]} ${formAt} 0 R>>/ExtGState <</${names[3]} ${stateAt} 0 R>>>>`;
  const pdf = openPdf(
    Buffer.from(
      pdfOf(
        '<</Type /Catalog /Pages 2 0 R>>',
        `<</Type /Pages /Kids [3 0 R] /MediaBox [${box}]>>`,
        `<</Type /Page /Parent 2 0 R /Resources ${resources} /Contents ${contentAt} 0 R /StructParents ${others}>>`,
        ...Array.from({length: others}, () => '42'),
        `<</Type /Font /Subtype /TrueType /BaseFont /${font} /FontDescriptor ${descriptorAt} 0 R /Widths [${others}]>>`,
        packed(picture, '/Type /XObject /Subtype /Image /Width 2 /Height 3'),
        packed(named(form), `/Type /XObject /Subtype /Form /Resources ${resources} /StructParent ${others}`),
        `<<${state}>>`,
        packed(named(content)),
        `<</Type /FontDescriptor /FontName /${font} /Ascent 1036 /FontFile2 ${descriptorAt} 0 R>>`,
      ),
      'latin1',
    ),
  );
  const [page = 0] = pageObjects(pdf);
  return drawingDigester(pdf)(page);
}

const plain = fingerprint();

describe('what is drawn elsewhere does not matter', () => {
  test('names and numbers of objects', () => {
    // Longer names never begin with a shorter one that stands for something else.
    const number = fc.integer({min: 1, max: 99_999});
    fc.assert(
      fc.property(fc.tuple(number, number, number, number), fc.nat(30), ([f, p, d, g], others) => {
        fc.pre(p !== d);
        expect(fingerprint({names: [`F${f}`, `X${p}`, `X${d}`, `G${g}`], others})).toBe(plain);
      }),
    );
  });

  test('which glyphs other pages use of a font', () => {
    expect(fingerprint({font: 'QWERTY+SourceSerif4-Regular'})).toBe(plain);
  });

  test('what ties the text to the structure tree', () => {
    const content =
      'q /G gs /NonStruct <</MCID 7 >>BDC BT /F 12 Tf 1 0 0 -1 10 20 Tm <0008> Tj EMC (a /F1 b) Tj ET /P Do /D Do Q';
    expect(fingerprint({content})).toBe(plain);
  });

  test('how high the pages before are piled up, to the digits that are written', () => {
    const piled = (pages: number, digits: number) => {
      const top = pages * 947;
      // A whole number of pixels and 33/64 of one, as Chromium writes them: with eight digits in all.
      const height = (top + 120 + 33 / 64).toPrecision(8);
      const matrix = (275 - top * 3.125).toPrecision(digits);
      return fingerprint({
        content: `q 3.125 0 0 3.125 312.5 ${matrix} cm 0 ${top + 88} 626 2 re f BT /F 9 Tf 1 0 0 -1 0 ${height} Tm <0008> Tj ET 4 ${top + 90} m 4 ${top + 99} l S Q`,
      });
    };
    const first = piled(0, 8);
    for (const pages of [1, 2, 77, 126, 250]) expect(piled(pages, 8)).toBe(first);
  });
});

describe('what is drawn does', () => {
  test.each<[string, Sample]>([
    [
      'another glyph',
      {content: 'q /G gs BT /F 12 Tf 1 0 0 -1 10 20 Tm <0009> Tj (a /F1 b) Tj ET /P Do /D Do Q'},
    ],
    [
      'the same a pixel lower',
      {content: 'q /G gs BT /F 12 Tf 1 0 0 -1 10 21 Tm <0008> Tj (a /F1 b) Tj ET /P Do /D Do Q'},
    ],
    [
      'another size',
      {content: 'q /G gs BT /F 13 Tf 1 0 0 -1 10 20 Tm <0008> Tj (a /F1 b) Tj ET /P Do /D Do Q'},
    ],
    [
      'a string that looks like a name',
      {content: 'q /G gs BT /F 12 Tf 1 0 0 -1 10 20 Tm <0008> Tj (a /F2 b) Tj ET /P Do /D Do Q'},
    ],
    [
      'the picture in the place of the drawing',
      {content: 'q /G gs BT /F 12 Tf 1 0 0 -1 10 20 Tm <0008> Tj (a /F1 b) Tj ET /D Do /P Do Q'},
    ],
    ['another font', {font: 'AAAAAA+SourceSerif4-Italic'}],
    ['another picture', {picture: 'pixel5'}],
    ['another letter in a drawing', {form: 'BT /F 9 Tf <0102> Tj ET'}],
    ['another graphics state', {state: '/ca .5'}],
    ['another paper', {box: '0 0 612 792'}],
  ])('%s', (_, sample) => {
    expect(fingerprint(sample)).not.toBe(plain);
  });
});

/** A page of `shown` in a font made of drawings: `glyphs` by their codes. */
function drawnText(shown: string, glyphs: Readonly<Record<number, string>>): string {
  const codes = Object.keys(glyphs).map(Number);
  const drawings = codes.map((code, index) => `/g${code} ${5 + index} 0 R`);
  const differences = codes.map((code) => `${code} /g${code}`);
  const pdf = openPdf(
    Buffer.from(
      pdfOf(
        '<</Type /Catalog /Pages 2 0 R>>',
        '<</Type /Pages /Kids [3 0 R]>>',
        `<</Type /Page /MediaBox [0 0 9 9] /Contents 4 0 R /Resources <</Font <</F1 <</Type /Font /Subtype /Type3
          /FontMatrix [.001 0 0 .001 0 0] /CharProcs <<${drawings.join(' ')}>> /Encoding <</Differences [${differences.join(' ')}]>>>>>>>>>>`,
        packed(`BT /F1 9 Tf ${shown} Tj ET`),
        ...Object.values(glyphs).map((drawing) => stream(drawing)),
      ),
      'latin1',
    ),
  );
  return drawingDigester(pdf)(3);
}

test('of a font made of drawings, the drawings count and not how they are numbered', () => {
  const one = drawnText('<0102>', {1: '0 0 m 5 5 l S', 2: '0 0 m 7 7 l S'});
  expect(drawnText('<0304>', {1: '9 9 m 1 1 l S', 3: '0 0 m 5 5 l S', 4: '0 0 m 7 7 l S'})).toBe(one);
  expect(drawnText('(\\003\\004)', {3: '0 0 m 5 5 l S', 4: '0 0 m 7 7 l S'})).toBe(one);
  expect(drawnText('<0102>', {1: '0 0 m 5 5 l S', 2: '0 0 m 7 8 l S'})).not.toBe(one);
});

test('a stream that cannot be unpacked is told', () => {
  const broken = pdfOf(
    '<</Type /Catalog /Pages 2 0 R>>',
    '<</Type /Pages /Kids [3 0 R]>>',
    '<</Type /Page /MediaBox [0 0 9 9] /Contents 4 0 R>>',
    stream('no such thing', '/Filter /FlateDecode'),
  );
  expect(() => drawingDigester(openPdf(Buffer.from(broken, 'latin1')))(3)).toThrow(PdfSyntaxError);
});
