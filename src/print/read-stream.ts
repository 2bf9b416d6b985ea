import {inflateSync} from 'node:zlib';
import type {PdfFile} from './pdf-file.ts';
import {isDictionary, type PdfReference, PdfSyntaxError, parsePdfValue} from './pdf-syntax.ts';

/** No page comes near; a file that was made to fill the memory is told. */
const mostBytes = 256 * 1024 * 1024;

/**
 * The data of a stream (ISO 32000-1, section 7.3.8), inflated where it was deflated and as it stands where it is packed in another
 * way; null when the object is no stream. Throws `PdfSyntaxError`.
 */
export function readStream(pdf: PdfFile, {object}: PdfReference): Buffer | null {
  const offset = pdf.offsets.get(object);
  if (offset === undefined) return null;
  const {value, end} = parsePdfValue(pdf.text, pdf.text.indexOf('obj', offset) + 'obj'.length);
  const opening = /\s*stream\r?\n/y;
  opening.lastIndex = end;
  if (!isDictionary(value) || !opening.test(pdf.text)) return null;
  const length = pdf.resolve(value.get('/Length'));
  const start = opening.lastIndex;
  if (typeof length !== 'number' || !(start + length <= pdf.text.length))
    throw new PdfSyntaxError(`the stream of object ${object} has no end`);
  const data = Buffer.from(pdf.text.slice(start, start + length), 'latin1');
  if (pdf.resolve(value.get('/Filter')) !== '/FlateDecode') return data;
  try {
    return inflateSync(data, {maxOutputLength: mostBytes});
  } catch {
    throw new PdfSyntaxError(`the stream of object ${object} cannot be unpacked`);
  }
}
