import type {PageCounts, Sheet} from '../layout/printable.ts';
import {readLabels} from '../print/pdf-facts.ts';
import {openPdf} from '../print/pdf-file.ts';
import {PdfSyntaxError} from '../print/pdf-syntax.ts';

/**
 * How many pages each sheet took in `pdf`, the document as it was last printed, read from its page labels; null when
 * it is no PDF of ours or lacks one of `sheets`. They are a guess and no more: whoever prints with
 * them compares, and only what agrees with its own pages is kept.
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
  const counts = sheets
    .filter(({blank}) => !blank)
    .map(({anchor, label}) => [anchor, pages.get(label)] as const);
  return counts.every((entry): entry is [string, number] => entry[1] !== undefined) ? new Map(counts) : null;
}
