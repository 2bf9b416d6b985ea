import {openPdf, type PdfFile, pageObjects} from './pdf-file.ts';
import {
  decodePdfText,
  isArray,
  isDictionary,
  isName,
  isReference,
  isString,
  type PdfDictionary,
  type PdfName,
  type PdfValue,
} from './pdf-syntax.ts';

export interface PageFacts {
  /** The label that viewers show for the page; null when the file has none for it. */
  readonly label: string | null;
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
}

export interface OutlineEntry {
  readonly title: string;
  /** Counted from 0; null when the entry leads nowhere. */
  readonly page: number | null;
  readonly children: readonly OutlineEntry[];
}

export interface FontFacts {
  /** PostScript name without the mark of a subset, such as `SourceSerif4-Regular`. */
  readonly name: string;
  readonly embedded: boolean;
}

/** What can be said of a finished PDF without drawing it. Pages count from 0. */
export interface PdfFacts {
  readonly pages: readonly PageFacts[];
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly creator: string;
  readonly created: string;
  readonly language: string;
  readonly outline: readonly OutlineEntry[];
  /** Pages by name; the names are ids of the printed HTML. */
  readonly destinations: ReadonlyMap<string, number>;
  /** `target` is an address, or `#` and the name of a destination. */
  readonly links: readonly {readonly page: number; readonly target: string}[];
  /** Names that links lead to and that no destination has. */
  readonly dangling: readonly string[];
  readonly fonts: readonly FontFacts[];
  /** How many elements of each kind the structure tree holds; empty when there is none. */
  readonly tags: ReadonlyMap<string, number>;
}

const millimetresPerPoint = 25.4 / 72;

/** Throws `PdfSyntaxError` when the file was not written by Chromium. */
export function readPdfFacts(bytes: Uint8Array): PdfFacts {
  const pdf = openPdf(bytes);
  const catalog = pdf.dictionary(pdf.trailer.get('/Root'));
  const info = pdf.dictionary(pdf.trailer.get('/Info'));
  const pages = pageObjects(pdf);
  const destinations = readDestinations(pdf);
  const links = readLinks(pdf, pages);
  return {
    pages: readPages(pdf, pages),
    title: textOf(info.get('/Title')),
    author: textOf(info.get('/Author')),
    subject: textOf(info.get('/Subject')),
    creator: textOf(info.get('/Creator')),
    created: textOf(info.get('/CreationDate')),
    language: textOf(catalog.get('/Lang')),
    outline: readOutline(pdf, pages, pdf.dictionary(catalog.get('/Outlines'))),
    destinations,
    links,
    dangling: links
      .filter(({target}) => target.startsWith('#') && !destinations.has(target.slice(1)))
      .map(({target}) => target.slice(1)),
    fonts: readFonts(pdf),
    tags: countTags(pdf, catalog),
  };
}

/** The page, counted from 0, on which each named element begins. */
export function readDestinations(pdf: PdfFile): ReadonlyMap<string, number> {
  const pages = pageObjects(pdf);
  const entries = pdf.dictionary(pdf.dictionary(pdf.trailer.get('/Root')).get('/Dests'));
  const destinations = new Map<string, number>();
  for (const [name, place] of entries) {
    const page = pageOf(pages, pdf.array(place)[0]);
    if (page !== null) destinations.set(idOf(name), page);
  }
  return destinations;
}

/** Every font with which something is set, sorted by name. */
export function readFonts(pdf: PdfFile): readonly FontFacts[] {
  const fonts = new Map<string, FontFacts>();
  const seen = new Set<number>();
  const visit = (value: PdfValue): void => {
    if (isReference(value)) {
      if (seen.has(value.object)) return;
      seen.add(value.object);
    }
    const resolved = pdf.resolve(value);
    if (isArray(resolved)) for (const each of resolved) visit(each);
    if (!isDictionary(resolved)) return;
    if (resolved.get('/Type') === '/Font') {
      const font = describeFont(pdf, resolved);
      fonts.set(font.name, font);
    } else for (const each of resolved.values()) visit(each);
  };
  for (const object of pageObjects(pdf)) visit(pdf.dictionary({object}).get('/Resources') ?? null);
  return [...fonts.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

function describeFont(pdf: PdfFile, font: PdfDictionary): FontFacts {
  const inner = pdf.dictionary(pdf.array(font.get('/DescendantFonts'))[0]);
  const descriptor = pdf.dictionary(inner.get('/FontDescriptor') ?? font.get('/FontDescriptor'));
  const name = font.get('/BaseFont') ?? descriptor.get('/FontName') ?? '/unnamed';
  const files = ['/FontFile', '/FontFile2', '/FontFile3'] as const;
  return {
    name: (isName(name) ? name : '/unnamed').slice(1).replace(/^[A-Z]{6}\+/, ''),
    // The glyphs of a Type 3 font are drawings within the file.
    embedded: font.get('/Subtype') === '/Type3' || files.some((file) => descriptor.has(file)),
  };
}

function readPages(pdf: PdfFile, pages: readonly number[]): readonly PageFacts[] {
  const labels = readLabels(pdf);
  return pages.map((object, index) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = pdf
      .array(pdf.dictionary({object}).get('/MediaBox'))
      .map(Number);
    return {
      label: labels.get(index) ?? null,
      width: (right - left) * millimetresPerPoint,
      height: (top - bottom) * millimetresPerPoint,
    };
  });
}

/** By page, counted from 0: labels that are a text of their own for one page; that is how `finishPdf` writes them. */
export function readLabels(pdf: PdfFile): ReadonlyMap<number, string> {
  const catalog = pdf.dictionary(pdf.trailer.get('/Root'));
  const numbers = pdf.array(pdf.dictionary(catalog.get('/PageLabels')).get('/Nums'));
  const labels = new Map<number, string>();
  for (let at = 0; at + 1 < numbers.length; at += 2) {
    labels.set(Number(numbers[at]), textOf(pdf.dictionary(numbers[at + 1]).get('/P')));
  }
  return labels;
}

function readOutline(pdf: PdfFile, pages: readonly number[], parent: PdfDictionary): readonly OutlineEntry[] {
  const entries: OutlineEntry[] = [];
  for (let next = parent.get('/First'); next !== undefined; ) {
    const entry = pdf.dictionary(next);
    const goal = entry.get('/Dest') ?? pdf.dictionary(entry.get('/A')).get('/D');
    entries.push({
      title: textOf(entry.get('/Title')),
      page: pageOf(pages, pdf.array(goal)[0]),
      children: readOutline(pdf, pages, entry),
    });
    next = entry.get('/Next');
  }
  return entries;
}

function readLinks(pdf: PdfFile, pages: readonly number[]): PdfFacts['links'] {
  return pages.flatMap((object, page) =>
    pdf.array(pdf.dictionary({object}).get('/Annots')).flatMap((reference) => {
      const annotation = pdf.dictionary(reference);
      if (annotation.get('/Subtype') !== '/Link') return [];
      const name = annotation.get('/Dest') ?? null;
      const address = pdf.dictionary(annotation.get('/A')).get('/URI') ?? null;
      if (isName(name)) return [{page, target: `#${idOf(name)}`}];
      return isString(address) ? [{page, target: decodePdfText(address)}] : [];
    }),
  );
}

function countTags(pdf: PdfFile, catalog: PdfDictionary): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const waiting: PdfValue[] = [pdf.dictionary(catalog.get('/StructTreeRoot')).get('/K') ?? null];
  while (waiting.length > 0) {
    const node = pdf.resolve(waiting.pop());
    if (isArray(node)) for (const each of node) waiting.push(each);
    if (!isDictionary(node)) continue;
    const kind = node.get('/S') ?? null;
    if (isName(kind)) counts.set(kind.slice(1), (counts.get(kind.slice(1)) ?? 0) + 1);
    waiting.push(node.get('/K') ?? null);
  }
  return new Map([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function pageOf(pages: readonly number[], value: PdfValue | undefined): number | null {
  if (value === undefined || !isReference(value)) return null;
  const index = pages.indexOf(value.object);
  return index < 0 ? null : index;
}

/** Chromium names a destination by the id as it stands in an address. */
function idOf(name: PdfName): string {
  try {
    return decodeURIComponent(name.slice(1));
  } catch {
    return name.slice(1);
  }
}

function textOf(value: PdfValue | undefined): string {
  return value !== undefined && isString(value) ? decodePdfText(value) : '';
}
