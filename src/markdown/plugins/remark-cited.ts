import type {CitationClusterNode, Root} from 'mdast';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import type {ComposeContext} from '../compose-context.ts';

/** Citations become what the citation engine made of them; one that could not be read is printed as it was written. */
export const remarkCited: Plugin<[Pick<ComposeContext, 'citations' | 'slots'>], Root> =
  ({citations, slots}) =>
  (tree) => {
    visit(tree, 'citationCluster', (node, index, parent) => {
      if (!parent || index === undefined) return;
      const content = citations[node.index];
      parent.children[index] =
        content === undefined ? {type: 'text', value: asWritten(node)} : slots.keep(content);
    });
  };

function asWritten({pieces, cluster}: CitationClusterNode): string {
  const written = pieces.map(({text}) => text).join(' ');
  return cluster.inText ? written : `[${written}]`;
}
