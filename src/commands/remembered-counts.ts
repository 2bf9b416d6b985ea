import type {PageCounts, Sheet} from '../layout/printable.ts';
import {readLabels} from '../print/pdf-facts.ts';
import {openPdf} from '../print/pdf-file.ts';
import {PdfSyntaxError} from '../print/pdf-syntax.ts';

/**
 * How many pages each sheet took in `pdf`, the document as it was last printed, read from its page labels; null when
 * it is no PDF of ours or has none of `sheets`. Of a sheet that it lacks the guess is one page. They are guesses and no
 * more: whoever prints with them compares, and only what agrees with its own pages is kept.
 */
export function rememberedCounts(pdf: Uint8Array, sheets: readonly Sheet[]): PageCounts {
  const pages = new Map<string, number>();
  try {
    for (const label of readLabels(openPdf(pdf)).values()) {
      const [sheet = '', number] = label.split(' · ');
      if (number !== 'back') pages.set(sheet, (pages.get(sheet) ?? 0) + 1);
    }
  } catch (error) {
    if (error instanceof PdfSyntaxError) return null;
    throw error;
  }
  const asked = sheets.filter(({blank}) => !blank);
  if (!asked.some(({label}) => pages.has(label))) return null;
  return new Map(asked.map(({anchor, label}) => [anchor, pages.get(label) ?? 1]));
}
