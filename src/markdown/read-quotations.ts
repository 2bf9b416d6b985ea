import type {Nodes, Paragraph, Parents, Root} from 'mdast';
import type {Place} from '../diagnostics/finding.ts';
import type {Quotation} from '../model/body.ts';
import {countWords} from './count-words.ts';
import {nodePlace} from './node-place.ts';

/**
 * What a text quotes: block quotes, and words between quotation marks, double or the curly single ones of British print;
 * straight single marks are apostrophes too often. It is cited when a citation stands within the quote, in the same
 * paragraph, or, for a block quote, in the paragraph that leads up to it.
 */
export function readQuotations(tree: Root, lines: readonly string[]): readonly Quotation[] {
  const quotations: Quotation[] = [];
  const lookAt = (node: Nodes, before: Nodes | undefined) => {
    if (node.type === 'blockquote') {
      const isCited = hasCitation(node) || (before?.type === 'paragraph' && hasCitation(before));
      quotations.push({words: countWords({type: 'root', children: [node]}), isCited, place: nodePlace(node)});
      return;
    }
    if (node.type === 'paragraph') quotations.push(...inParagraph(node, lines));
    if (!('children' in node)) return;
    for (const [index, child] of node.children.entries()) lookAt(child, node.children[index - 1]);
  };
  lookAt(tree, undefined);
  return quotations;
}

const marked = /(?<![\p{L}\p{N}])(?:“[^“”]+”|"[^"“”]+"(?![\p{L}\p{N}])|‘[^‘“”]+?’(?![\p{L}\p{N}]))/gu;

function inParagraph(paragraph: Paragraph, lines: readonly string[]): readonly Quotation[] {
  const pieces = textPieces(paragraph);
  const text = pieces.map(({value}) => value).join('');
  const isCited = hasCitation(paragraph);
  return [...text.matchAll(marked)].map(({0: quoted, index}) => {
    const [start, end] = [placeAt(pieces, index, lines), placeAt(pieces, index + quoted.length - 1, lines)];
    return {
      words: wordsIn(quoted),
      isCited,
      place: start && end ? {...start, endLine: end.endLine, endColumn: end.endColumn} : nodePlace(paragraph),
    };
  });
}

interface TextPiece {
  readonly value: string;
  readonly node: Nodes;
}

/** The words of a paragraph in order; what is no text counts as nothing. */
function textPieces(node: Parents): readonly TextPiece[] {
  return node.children.flatMap((child) => {
    if (child.type === 'text' || child.type === 'inlineCode') return [{value: child.value, node: child}];
    if (child.type === 'break') return [{value: '\n', node: child}];
    return 'children' in child ? textPieces(child) : [];
  });
}

/** Where a letter of the paragraph stands; null when its line of the file does not show it there. */
function placeAt(pieces: readonly TextPiece[], offset: number, lines: readonly string[]): Place | null {
  let before = 0;
  for (const {value, node} of pieces) {
    const within = offset - before;
    before += value.length;
    if (within >= value.length || !node.position) continue;
    const passed = value.slice(0, within).split('\n');
    const line = node.position.start.line + passed.length - 1;
    const inLine = passed.at(-1) ?? '';
    const written = lines[line - 1] ?? '';
    const from = passed.length === 1 ? node.position.start.column - 1 : 0;
    const column = written.indexOf(inLine + value.charAt(within), from) + inLine.length;
    if (written.charAt(column) !== value.charAt(within)) return null;
    return {line, column: column + 1, endLine: line, endColumn: column + 2};
  }
  return null;
}

function hasCitation(node: Nodes): boolean {
  return node.type === 'citationCluster' || ('children' in node && node.children.some(hasCitation));
}

function wordsIn(text: string): number {
  return countWords({type: 'root', children: [{type: 'paragraph', children: [{type: 'text', value: text}]}]});
}
