import type {Nodes, Parents, Root, Text} from 'mdast';
import type {Plugin} from 'unified';
import {SKIP, visit} from 'unist-util-visit';
import {applyEdits, objectMark, typographicEdits} from '../../support/typography.ts';

/** Sets the text of each paragraph, heading and table cell as a whole, so that marks around *emphasis* find each other. */
export const remarkTypography: Plugin<[], Root> = () => (tree) => {
  visit(tree, (node) => {
    if (node.type !== 'paragraph' && node.type !== 'heading' && node.type !== 'tableCell') return;
    setBlock(node);
    return SKIP;
  });
};

function setBlock(block: Parents): void {
  const texts: {readonly node: Text; readonly offset: number}[] = [];
  let whole = '';
  const collect = (node: Nodes): void => {
    if (node.type === 'text') {
      texts.push({node, offset: whole.length});
      whole += node.value;
    } else if ('children' in node) {
      for (const child of node.children) collect(child);
    } else {
      whole += node.type === 'break' ? '\n' : objectMark;
    }
  };
  collect(block);
  const edits = typographicEdits(whole);
  for (const {node, offset} of texts) node.value = applyEdits(node.value, offset, edits);
}
