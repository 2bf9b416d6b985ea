import type {PdfFile} from './pdf-file.ts';
import {decodePdfText, isString, type PdfDictionary, type PdfName, type PdfValue} from './pdf-syntax.ts';
import type {LeafNotes} from './print-job.ts';

/**
 * The notes as the catalogue's private data of this program (ISO 32000-1, section 14.5), which every other program leaves
 * alone; null when there is nothing to note. `changed` is a date of a PDF.
 */
export function writeLeafNotes({drafts, gone}: LeafNotes, changed: string): PdfDictionary | null {
  if (drafts.length + gone.length === 0) return null;
  const notes: PdfDictionary = new Map<PdfName, PdfValue>([
    ['/Drafts', drafts],
    [
      '/Gone',
      gone.map((leaf) => ({bytes: `\xfe\xff${Buffer.from(leaf, 'utf16le').swap16().toString('latin1')}`})),
    ],
  ]);
  const ours: PdfDictionary = new Map<PdfName, PdfValue>([
    ['/LastModified', {bytes: changed}],
    ['/Private', notes],
  ]);
  return new Map<PdfName, PdfValue>([['/Swatchleaf', ours]]);
}

/** Empty lists where the file has none. */
export function readLeafNotes(pdf: PdfFile): LeafNotes {
  const pieces = pdf.dictionary(pdf.dictionary(pdf.trailer.get('/Root')).get('/PieceInfo'));
  const notes = pdf.dictionary(pdf.dictionary(pieces.get('/Swatchleaf')).get('/Private'));
  return {
    drafts: pdf.array(notes.get('/Drafts')).map(Number),
    gone: pdf.array(notes.get('/Gone')).flatMap((leaf) => (isString(leaf) ? [decodePdfText(leaf)] : [])),
  };
}
