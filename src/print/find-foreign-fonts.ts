import type {PrintNode, PrintPage} from './browser.ts';
import type {DeclaredFont} from './in-page/load-fonts.ts';
import {readFonts} from './pdf-facts.ts';
import type {PdfFile} from './pdf-file.ts';
import type {PrintTrouble} from './print-job.ts';

/**
 * Text set in a font of this computer because none of the document's own has its letters: on another computer it would
 * look otherwise or be empty boxes. Nothing is said of documents that bring no fonts.
 *
 * The names of the fonts in the PDF tell at once whether there is any; only then is the page searched for the words.
 */
export async function findForeignFonts(
  page: PrintPage,
  pdf: PdfFile,
  declared: readonly DeclaredFont[],
  anchors: readonly string[],
): Promise<readonly PrintTrouble[]> {
  if (declared.length === 0) return [];
  const families = declared.map(({family}) => plain(family));
  const strange = readFonts(pdf)
    .map(({name}) => name)
    .filter((name) => !families.some((family) => plain(name).startsWith(family)));
  if (strange.length === 0) return [];

  const {uses, own} = await fontUses(page, anchors);
  const seen = new Set(uses.map(({font}) => font));
  const elsewhere = strange.filter((name) => !seen.has(name) && !own.has(name));
  return [
    ...uses.map(
      ({anchor, text, font}): PrintTrouble => ({
        kind: 'missing glyph',
        anchor,
        detail: `\`${text}\` has letters that no font of the layout has; \`${font}\` of this computer was used`,
      }),
    ),
    ...elsewhere.map(
      (font): PrintTrouble => ({
        kind: 'missing glyph',
        anchor: null,
        detail: `a running head or foot has letters that no font of the layout has; \`${font}\` of this computer was used`,
      }),
    ),
  ];
}

interface FontUse {
  readonly anchor: string | null;
  readonly text: string;
  readonly font: string;
}

/** An element with words of its own. */
interface WordedNode {
  readonly node: PrintNode;
  readonly words: string;
  readonly anchor: string | null;
  /** The elements around it that have words too. */
  readonly around: readonly PrintNode[];
}

/** Where fonts of this computer are used, and the names of the fonts that the document itself brings. */
async function fontUses(
  page: PrintPage,
  anchors: readonly string[],
): Promise<{uses: readonly FontUse[]; own: ReadonlySet<string>}> {
  const session = await page.createCDPSession();
  await session.send('DOM.enable');
  await session.send('CSS.enable');
  const {root} = await session.send('DOM.getDocument', {depth: -1});
  const nodes = wordedNodes(root, new Set(anchors), null, []);
  const answers = await Promise.all(
    nodes.map(({node: {nodeId}}) => session.send('CSS.getPlatformFontsForNode', {nodeId})),
  );
  const own = new Set<string>();
  const uses: FontUse[] = [];
  // The browser counts what stands in a node's children to the node as well: tell it for the innermost only.
  const told = new Map<PrintNode, Set<string>>();
  nodes.forEach(({node, words, anchor, around}, index) => {
    for (const {postScriptName: font, isCustomFont} of answers[index]?.fonts ?? []) {
      if (isCustomFont) own.add(font);
      else if (!told.get(node)?.has(font)) uses.push({anchor, text: words.slice(0, 60), font});
      if (isCustomFont) continue;
      for (const outer of around) told.set(outer, (told.get(outer) ?? new Set()).add(font));
    }
  });
  return {uses, own};
}

/** The elements below `node` that have words of their own, the inner ones before those around them. */
function wordedNodes(
  node: PrintNode,
  sheets: ReadonlySet<string>,
  anchor: string | null,
  around: readonly PrintNode[],
): WordedNode[] {
  const id = attribute(node.attributes, 'id');
  const here = id !== null && sheets.has(id) ? id : anchor;
  const children = node.children ?? [];
  const texts = children.filter(({nodeName}) => nodeName === '#text').map(({nodeValue}) => nodeValue);
  const words = node.nodeName === 'STYLE' ? '' : texts.join(' ').replace(/\s+/g, ' ').trim();
  const inner = words === '' ? around : [...around, node];
  const below = children.flatMap((child) => wordedNodes(child, sheets, here, inner));
  return words === '' ? below : [...below, {node, words, anchor: here, around}];
}

function attribute(attributes: readonly string[] | undefined, name: string): string | null {
  const at = attributes?.findIndex((each, index) => index % 2 === 0 && each === name) ?? -1;
  return at < 0 ? null : (attributes?.[at + 1] ?? null);
}

/** A font's name without what families and PostScript names write differently. */
function plain(name: string): string {
  return name.toLowerCase().replace(/[^a-z0-9]/g, '');
}
