import type {Nodes} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import type {Body} from '../model/body.ts';

/**
 * An item's text as plain paragraphs, for comparing two versions: headings, list items and table rows each for
 * themselves, written rows line by line, citations as they were typed. Directives are left out: what they compute
 * follows from other values.
 */
export function plainParagraphs({tree}: Pick<Body, 'tree'>): readonly string[] {
  return tree.children.flatMap(paragraphsOf).filter((paragraph) => paragraph !== '');
}

function paragraphsOf(node: Nodes): readonly string[] {
  switch (node.type) {
    case 'list':
    case 'listItem':
    case 'blockquote':
    case 'table':
    case 'footnoteDefinition':
      return node.children.flatMap(paragraphsOf);
    case 'tableRow':
      return [node.children.map(wordsOf).join(' | ')];
    case 'code':
      return node.value.split('\n');
    case 'paragraph':
    case 'heading':
      return [wordsOf(node)];
    default:
      return [];
  }
}

function wordsOf(node: Nodes): string {
  const text =
    node.type === 'citationCluster'
      ? `[${node.pieces.map((piece) => piece.text).join(' ')}]`
      : 'children' in node
        ? node.children.map(wordsOf).join('')
        : node.type === 'break'
          ? ' '
          : textOf(node);
  return text.replace(/\s+/g, ' ');
}
