import {createHash} from 'node:crypto';
import type {PdfFile} from './pdf-file.ts';
import {
  isArray,
  isDictionary,
  isName,
  isReference,
  isString,
  type PdfDictionary,
  type PdfName,
  type PdfReference,
  type PdfValue,
  parsePdfValue,
} from './pdf-syntax.ts';
import {readStream} from './read-stream.ts';
import {steadyContent} from './steady-content.ts';

/** Gives the digest of what a page draws; `page` is the number of its object. */
export type DrawingDigester = (page: number) => string;

/**
 * What a page draws is its content, with everything that the content names, and the size of its paper. The rest of the
 * document must not matter: one more picture on page 3 gives other names to those of page 90, and one more page moves it.
 *
 * A font stands for its name and metrics, not for the outlines in the file, which are a subset that depends on the other
 * pages. The numbers of glyphs are those of the whole font. Only fonts made of drawings (Type 3) are looked at glyph by
 * glyph, since theirs are numbered anew in each file.
 */
export function drawingDigester(pdf: PdfFile): DrawingDigester {
  const known = new Map<number, string>();

  function describe(value: PdfValue): string {
    if (isReference(value)) return describeObject(value);
    if (isArray(value)) return `[${value.map(describe).join(' ')}]`;
    if (isString(value)) return `(${Buffer.from(value.bytes, 'latin1').toString('hex')})`;
    if (!isDictionary(value)) return String(value);
    if (value.get('/Type') === '/Font') return describeFont(value);
    const entries = [...value].filter(([key]) => !apart.has(key)).map(([key, each]) => [key, describe(each)]);
    return `<<${entries
      .map((entry) => entry.join(' '))
      .sort()
      .join(' ')}>>`;
  }

  function describeObject(reference: PdfReference): string {
    const before = known.get(reference.object);
    if (before !== undefined) return before;
    // For an object that holds itself.
    known.set(reference.object, 'itself');
    const value = pdf.resolve(reference);
    const data = isDictionary(value) ? readStream(pdf, reference) : null;
    let text = describe(value);
    if (isDictionary(value) && data !== null) {
      const resources = value.get('/Resources');
      text += resources === undefined ? digest(data) : describeContent(data, pdf.dictionary(resources));
    }
    const result = digest(text);
    known.set(reference.object, result);
    return result;
  }

  function describeFont(font: PdfDictionary): string {
    const inner = pdf.dictionary(pdf.array(font.get('/DescendantFonts'))[0]);
    const descriptor = new Map(pdf.dictionary(inner.get('/FontDescriptor') ?? font.get('/FontDescriptor')));
    for (const key of outlines) descriptor.delete(key);
    const names = [font.get('/Subtype'), font.get('/BaseFont'), descriptor.get('/FontName')];
    descriptor.delete('/FontName');
    return [
      ...names.map((name = null) => String(name).replace(subsetMark, '/')),
      describe(descriptor),
      describe(font.get('/FontMatrix') ?? null),
    ].join(' ');
  }

  function describeContent(content: Buffer, resources: PdfDictionary): string {
    const find = (kind: PdfName, name: string) => pdf.dictionary(resources.get(kind)).get(`/${name}`);
    const steady = steadyContent(content.toString('latin1'), {
      describe(operator, name) {
        const value = find(kinds[operator] ?? '/Font', name);
        return value === undefined ? null : describe(value);
      },
      glyphs(name) {
        const font = pdf.dictionary(find('/Font', name));
        return font.get('/Subtype') === '/Type3' ? (string) => describeGlyphs(font, string) : null;
      },
    });
    return digest(steady);
  }

  /** A shown string of a font made of drawings, each glyph replaced by a digest of its drawing. */
  function describeGlyphs(font: PdfDictionary, string: string): string {
    const {value} = parsePdfValue(string, 0);
    if (!isString(value)) return string;
    const names = glyphNames(pdf.array(pdf.dictionary(font.get('/Encoding')).get('/Differences')));
    const drawings = pdf.dictionary(font.get('/CharProcs'));
    const resources = pdf.dictionary(font.get('/Resources'));
    const glyphs = Array.from(value.bytes, (letter) => {
      const drawing = drawings.get(names.get(letter.charCodeAt(0)) ?? '/.notdef') ?? null;
      const data = isReference(drawing) ? readStream(pdf, drawing) : null;
      return data === null ? 'none' : describeContent(data, resources);
    });
    return `(${glyphs.join(' ')})`;
  }

  /** A page may have its size and resources from the tree above it. */
  function inherited(page: PdfDictionary, key: PdfName): PdfValue {
    let node = page;
    for (let depth = 0; depth < 64 && !node.has(key); depth++) node = pdf.dictionary(node.get('/Parent'));
    return node.get(key) ?? null;
  }

  return (object) => {
    const page = pdf.dictionary({object});
    const parts = [page.get('/Contents') ?? null].flatMap((contents) => {
      const value = pdf.resolve(contents);
      return isArray(value) ? value : [contents];
    });
    const content = Buffer.concat(
      parts.flatMap((part) => {
        const data = isReference(part) ? readStream(pdf, part) : null;
        return data === null ? [] : [data, Buffer.from('\n')];
      }),
    );
    const box = describe(inherited(page, '/MediaBox'));
    return digest(`${box} ${describeContent(content, pdf.dictionary(inherited(page, '/Resources')))}`);
  };
}

/** What a dictionary says of how its data are packed or where in the document it stands, and the names it uses itself. */
const apart: ReadonlySet<PdfName> = new Set<PdfName>([
  '/Filter',
  '/Length',
  '/Parent',
  '/Resources',
  '/StructParent',
  '/StructParents',
]);
const outlines = ['/FontFile', '/FontFile2', '/FontFile3', '/CharSet', '/CIDSet'] as const;
/** Six letters that tell the subsets of one file apart (ISO 32000-1, section 9.6.4). */
const subsetMark = /^\/[A-Z]{6}\+/;

/** In which part of the resources the name before an operator is found (ISO 32000-1, section 7.8.3). */
const kinds: Readonly<Record<string, PdfName>> = {
  Tf: '/Font',
  gs: '/ExtGState',
  Do: '/XObject',
  sh: '/Shading',
  cs: '/ColorSpace',
  CS: '/ColorSpace',
  scn: '/Pattern',
  SCN: '/Pattern',
};

function glyphNames(differences: readonly PdfValue[]): ReadonlyMap<number, PdfName> {
  const names = new Map<number, PdfName>();
  let code = 0;
  for (const each of differences) {
    if (isName(each)) names.set(code++, each);
    else code = Number(each);
  }
  return names;
}

function digest(data: string | Uint8Array): string {
  return createHash('sha256').update(data).digest('hex');
}
