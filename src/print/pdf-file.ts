import {
  isArray,
  isDictionary,
  isReference,
  type PdfDictionary,
  type PdfName,
  PdfSyntaxError,
  type PdfValue,
  parsePdfValue,
} from './pdf-syntax.ts';

/**
 * A PDF as Chromium writes it: one table of plain objects (ISO 32000-1, section 7.5.4), none packed together.
 * A general library reads everything and takes half a second for 100 pages; this reads what is asked for, and the print
 * loop asks two or three times for every document.
 */
export interface PdfFile {
  /** The file with one character a byte. */
  readonly text: string;
  readonly trailer: PdfDictionary;
  /** Where each object begins, by its number; absent numbers are free. */
  readonly offsets: ReadonlyMap<number, number>;
  /** The value itself where `value` is a reference to it. An object that does not exist is null, as the standard says. */
  resolve(value: PdfValue | undefined): PdfValue;
  /** The dictionary that `value` is or refers to; empty when it is none. A stream counts as its dictionary. */
  dictionary(value: PdfValue | undefined): PdfDictionary;
  array(value: PdfValue | undefined): readonly PdfValue[];
}

/** Throws `PdfSyntaxError` when the file is built in a way that Chromium does not. */
export function openPdf(bytes: Uint8Array): PdfFile {
  const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1');
  const start = /startxref\s+(\d+)\s+%%EOF\s*$/.exec(text.slice(-64))?.[1];
  if (start === undefined) throw new PdfSyntaxError('the file has no end mark');
  const {offsets, end} = readTable(text, Number(start));
  const {value: trailer} = parsePdfValue(text, end);
  if (!isDictionary(trailer)) throw new PdfSyntaxError('the file has no trailer');
  if (trailer.has('/Prev')) throw new PdfSyntaxError('the file has been changed after it was written');

  const known = new Map<number, PdfValue>();
  const resolve = (value: PdfValue | undefined): PdfValue => {
    if (value === undefined || !isReference(value)) return value ?? null;
    const offset = offsets.get(value.object);
    if (offset === undefined) return null;
    const before = known.get(value.object);
    if (before !== undefined) return before;
    const object = readObject(text, value.object, offset);
    known.set(value.object, object);
    return object;
  };
  const nothing: PdfDictionary = new Map<PdfName, PdfValue>();
  return {
    text,
    trailer,
    offsets,
    resolve,
    dictionary(value) {
      const resolved = resolve(value);
      return isDictionary(resolved) ? resolved : nothing;
    },
    array(value) {
      const resolved = resolve(value);
      return isArray(resolved) ? resolved : [];
    },
  };
}

/** The object numbers of the pages, in order. */
export function pageObjects(pdf: PdfFile): readonly number[] {
  const pages: number[] = [];
  const visit = (node: PdfValue | undefined, depth: number): void => {
    if (node === undefined || !isReference(node) || depth > 64)
      throw new PdfSyntaxError('the page tree is broken');
    const dictionary = pdf.dictionary(node);
    if (dictionary.get('/Type') === '/Page') pages.push(node.object);
    else for (const kid of pdf.array(dictionary.get('/Kids'))) visit(kid, depth + 1);
  };
  visit(pdf.dictionary(pdf.trailer.get('/Root')).get('/Pages'), 0);
  return pages;
}

function readTable(text: string, start: number): {offsets: Map<number, number>; end: number} {
  const offsets = new Map<number, number>();
  const section = /\s*(\d+) (\d+)\s*\n/y;
  const opening = /xref\s*\n/y;
  opening.lastIndex = start;
  if (!opening.test(text)) throw new PdfSyntaxError('the file has no plain table of objects');
  let at = opening.lastIndex;
  for (;;) {
    section.lastIndex = at;
    const match = section.exec(text);
    if (match === null) break;
    at = section.lastIndex;
    const [first, count] = [Number(match[1]), Number(match[2])];
    for (let index = 0; index < count; index++, at += 20) {
      const entry = text.slice(at, at + 20);
      if (entry[17] === 'n') offsets.set(first + index, Number(entry.slice(0, 10)));
    }
  }
  const end = text.indexOf('trailer', at);
  if (end < 0) throw new PdfSyntaxError('the file has no trailer');
  return {offsets, end: end + 'trailer'.length};
}

function readObject(text: string, object: number, offset: number): PdfValue {
  const opening = /\s*(\d+)\s+\d+\s+obj\b/y;
  opening.lastIndex = offset;
  if (opening.exec(text)?.[1] !== String(object))
    throw new PdfSyntaxError(`object ${object} is not where the table says`);
  return parsePdfValue(text, opening.lastIndex).value;
}
