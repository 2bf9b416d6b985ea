import type {Root} from 'hast';
import {visit} from 'unist-util-visit';

/**
 * Notes on each block the line of the file on which it begins, so that a preview can set a finding beside it. Nothing
 * of it is printed; documents for paper go without.
 */
export function rehypeLineMarks({marksLines}: {readonly marksLines: boolean}) {
  return (tree: Root): void => {
    if (!marksLines) return;
    visit(tree, 'element', (element) => {
      const line = element.position?.start.line;
      if (line !== undefined) element.properties.dataLine = line;
    });
  };
}
