import {execFileSync} from 'node:child_process';
import {readFile} from 'node:fs/promises';
import path from 'node:path';
import sharp from 'sharp';
import type {PdfFacts} from '../print/pdf-facts.ts';

/** Pages of the worked example that show each kind of thing once: the id of a sheet, and which of its leaves. */
const markedPages = [
  ['sheet-title', 1],
  ['sheet-contents', 1],
  ['tab-2', 1],
  ['sheet-S-01', 1],
  ['sheet-S-09', 3],
  ['sheet-T-01', 2],
  ['sheet-P-01', 4],
  ['sheet-references', 1],
] as const;

/** A quarter of the way from black to white: less is the edge of a letter that fell between other pixels. */
const threshold = 64;

interface Printed {
  readonly pdf: string;
  readonly facts: PdfFacts;
}

/**
 * One line for each marked page: how much of it looks different, at 100 dots to the inch. Needs `pdftoppm`; where that is
 * not installed, one line says so.
 */
export async function comparePages(before: Printed, after: Printed, folder: string): Promise<string[]> {
  const lines: string[] = [];
  for (const [anchor, leaf] of markedPages) {
    const name = `${anchor}, leaf ${leaf}`;
    const [first, second] = [before, after].map(({facts}) => facts.destinations.get(anchor));
    if (first === undefined || second === undefined) {
      lines.push(`${name}: not in both binders`);
      continue;
    }
    try {
      const pictures = await Promise.all([
        drawPage(before.pdf, first + leaf, path.join(folder, 'page-before')),
        drawPage(after.pdf, second + leaf, path.join(folder, 'page-after')),
      ]);
      const share = await differingShare(...pictures);
      lines.push(
        `${name}: ${share === null ? 'other size' : `${(100 * share).toFixed(2)} % of the page differs`}`,
      );
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) throw error;
      return ['pages were not compared as pictures: pdftoppm is not installed'];
    }
  }
  return lines;
}

/** The part of all pixels that differ by more than the threshold, 0 to 1; null when the pictures have not the same size. */
export async function differingShare(before: Uint8Array, after: Uint8Array): Promise<number | null> {
  const [first, second] = await Promise.all(
    [before, after].map((picture) => sharp(picture).greyscale().raw().toBuffer({resolveWithObject: true})),
  );
  if (first?.info.width !== second?.info.width || first?.info.height !== second?.info.height) return null;
  const pixels = first?.data ?? new Uint8Array();
  const others = second?.data ?? new Uint8Array();
  const differing = pixels.reduce(
    (count, value, index) => count + (Math.abs(value - (others[index] ?? 0)) > threshold ? 1 : 0),
    0,
  );
  return differing / pixels.length;
}

/** A page of a PDF, counted from 1, as a PNG. */
async function drawPage(pdf: string, page: number, output: string): Promise<Uint8Array> {
  execFileSync('pdftoppm', [
    '-png',
    '-r',
    '100',
    '-f',
    `${page}`,
    '-l',
    `${page}`,
    '-singlefile',
    pdf,
    output,
  ]);
  return readFile(`${output}.png`);
}
