import {getDocument, VerbosityLevel} from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What a reader of PDFs that is not ours finds in a file: pdf.js, which Firefox shows PDFs with. Pages count from 0. */
export interface PdfJsFacts {
  readonly sizes: readonly {readonly width: number; readonly height: number}[];
  readonly labels: readonly string[] | null;
  readonly outline: readonly {readonly title: string; readonly page: number; readonly depth: number}[];
  readonly destinations: ReadonlyMap<string, number>;
  readonly info: Readonly<Record<string, unknown>>;
  readonly texts: readonly string[];
  /** Kinds of structure elements with how many there are. */
  readonly roles: Readonly<Record<string, number>>;
  readonly links: readonly string[];
  readonly viewer: Readonly<Record<string, unknown>>;
  readonly pageMode: string;
}

const millimetresPerPoint = 25.4 / 72;

interface TreeNode {
  readonly role?: string;
  /** Set on the leaves, which have no role. */
  readonly type?: string;
  readonly children?: readonly TreeNode[];
}

export async function readWithPdfJs(bytes: Uint8Array): Promise<PdfJsFacts> {
  const loading = getDocument({
    data: Uint8Array.from(bytes),
    isEvalSupported: false,
    verbosity: VerbosityLevel.ERRORS,
  });
  const document = await loading.promise;
  const pageOf = async (goal: unknown): Promise<number> => {
    const explicit = typeof goal === 'string' ? await document.getDestination(goal) : goal;
    return Array.isArray(explicit) ? document.getPageIndex(explicit[0]) : -1;
  };

  const outline: {title: string; page: number; depth: number}[] = [];
  const walkOutline = async (
    entries: Awaited<ReturnType<typeof document.getOutline>>,
    depth: number,
  ): Promise<void> => {
    for (const entry of entries ?? []) {
      outline.push({title: entry.title, page: await pageOf(entry.dest), depth});
      await walkOutline(entry.items, depth + 1);
    }
  };
  await walkOutline(await document.getOutline(), 1);

  const destinations = new Map<string, number>();
  for (const [name, goal] of Object.entries(await document.getDestinations()))
    destinations.set(name, await pageOf(goal));

  const roles: Record<string, number> = {};
  const countRoles = (node: TreeNode): void => {
    if (node.role !== undefined) roles[node.role] = (roles[node.role] ?? 0) + 1;
    for (const child of node.children ?? []) countRoles(child);
  };
  const sizes: {width: number; height: number}[] = [];
  const texts: string[] = [];
  const links: string[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    sizes.push({width: (right - left) * millimetresPerPoint, height: (top - bottom) * millimetresPerPoint});
    const {items} = await page.getTextContent();
    texts.push(items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? '\n' : ''}` : '')).join(''));
    const tree = await page.getStructTree();
    if (tree) countRoles(tree);
    for (const annotation of await page.getAnnotations()) links.push(annotation.url ?? `#${annotation.dest}`);
  }
  const {info} = await document.getMetadata();
  const facts: PdfJsFacts = {
    sizes,
    labels: await document.getPageLabels(),
    outline,
    destinations,
    info: {...info},
    texts,
    roles,
    links,
    viewer: {...(await document.getViewerPreferences())},
    pageMode: await document.getPageMode(),
  };
  await loading.destroy();
  return facts;
}
