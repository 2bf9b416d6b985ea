import type {Nodes, Root} from 'mdast';

/**
 * The number of words of a text, as a word processor shows it for the printed text: runs of characters between white
 * space that hold a letter or a digit. `hand-knitted`, `3½"`, `it's` and a web address are one word each; a dash that
 * stands alone is none.
 *
 * Counted: paragraphs, headings, lists, quotes, tables, footnotes, and code within a sentence.
 * Not counted: front matter, citations, cross-references without a text of their own, descriptions of pictures, computed
 * tables, fenced and indented blocks (written rows, charts) and raw HTML.
 */
export function countWords(tree: Root): number {
  const parts: string[] = [];
  collect(tree, parts);
  const text = parts.join('').normalize('NFC');
  let words = 0;
  for (const [run] of text.matchAll(/\S+/g)) if (/[\p{L}\p{N}]/u.test(run)) words++;
  return words;
}

/** Nodes inside a sentence: they may stand in the middle of a word. */
const withinSentence = new Set([
  'text',
  'inlineCode',
  'emphasis',
  'strong',
  'delete',
  'link',
  'linkReference',
]);

function collect(node: Nodes, parts: string[]): void {
  if (node.type === 'text' || node.type === 'inlineCode') {
    parts.push(node.value);
  } else if ('children' in node && node.type !== 'leafDirective') {
    for (const child of node.children) collect(child, parts);
  }
  // Citations, footnote marks, pictures and HTML leave no gap: the word before them goes on behind them.
  if (!withinSentence.has(node.type) && ('children' in node || node.type === 'break')) parts.push('\n');
}
