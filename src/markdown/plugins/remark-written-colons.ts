import type {Nodes, PhrasingContent, Root} from 'mdast';
import type {Plugin} from 'unified';
import {SKIP, visit} from 'unist-util-visit';
import {eachNode} from '../../support/each-node.ts';

/**
 * No directive of ours stands inside a sentence, so what looks like one (`:smile`, `Row 1:k2`) is printed as written.
 */
export const remarkWrittenColons: Plugin<[], Root> = () => {
  return (tree, file) => {
    let isThere = false;
    eachNode<Nodes>(tree, ({type}) => {
      isThere ||= type === 'textDirective';
    });
    if (!isThere) return;
    const source = String(file);
    visit(tree, 'textDirective', (node, index, parent) => {
      if (!parent || index === undefined || !node.position) return;
      const {start, end} = node.position;
      const inner = {start: node.children.at(0)?.position?.start, end: node.children.at(-1)?.position?.end};
      const between = (from: typeof start, to: typeof start): PhrasingContent => ({
        type: 'text',
        value: source.slice(from.offset, to.offset).replace(/\s*\n[\s>]*/g, ' '),
        position: {start: from, end: to},
      });
      const written =
        inner.start && inner.end
          ? [between(start, inner.start), ...node.children, between(inner.end, end)]
          : [between(start, end)];
      parent.children.splice(index, 1, ...written);
      return [SKIP, index + (node.children.length > 0 ? 1 : 0)];
    });
  };
};
