import type {PrintedDocument, PrintTrouble} from './print-job.ts';

/** How many pages each part of a document takes, by its anchor. */
export type Counts = ReadonlyMap<string, number>;

export interface Settling<Document> {
  /** Makes the document with leaf numbers that suit `counts`; null while nothing has been printed yet. */
  render(counts: Counts | null): Document;
  print(document: Document, options: {readonly tagged: boolean}): Promise<PrintedDocument>;
  count(document: Document, printed: PrintedDocument): Counts;
  /** Whether the document's text holds numbers of its own pages. */
  usesCounts(document: Document): boolean;
}

export interface Settled<Document> {
  readonly document: Document;
  readonly printed: PrintedDocument;
  /** What the printed leaf numbers say; handed to the next build, it saves the first print. */
  readonly counts: Counts;
}

const mostPrints = 3;

const unsettled: PrintTrouble = {
  kind: 'unsettled pages',
  anchor: null,
  detail:
    'the leaf numbers in the contents change with every print, since they do not always take the same room',
};

/**
 * Prints a document whose text may hold the numbers of its own pages, which are known only when it is printed. One that
 * holds none is printed once.
 *
 * With the counts of an earlier build it prints at once and compares; without, it prints once for the counts alone.
 * Then it prints with the counts of the print before, until both agree. Counts that never do become a trouble.
 */
export async function settle<Document>(
  {render, print, count, usesCounts}: Settling<Document>,
  remembered: Counts | null,
): Promise<Settled<Document>> {
  let counts = remembered;
  if (counts === null) {
    const draft = render(null);
    const isFinal = !usesCounts(draft);
    const printed = await print(draft, {tagged: isFinal});
    counts = count(draft, printed);
    if (isFinal) return {document: draft, printed, counts};
  }
  for (let round = 1; ; round++) {
    const document = render(counts);
    const printed = await print(document, {tagged: true});
    const found = count(document, printed);
    if (areEqual(counts, found)) return {document, printed, counts};
    if (round === mostPrints) {
      return {document, printed: {...printed, troubles: [...printed.troubles, unsettled]}, counts: found};
    }
    counts = found;
  }
}

export function areEqual(a: Counts, b: Counts): boolean {
  return a.size === b.size && [...a].every(([anchor, pages]) => b.get(anchor) === pages);
}
