import type {Emphasis, Root} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import {linkKind} from '../link-kind.ts';

/** Paper cannot be clicked: a link to the web has its address after its words, unless the words are the address. */
export const remarkWrittenAddresses: Plugin<[], Root> = () => (tree) => {
  visit(tree, 'link', (link) => {
    if (linkKind(link.url) !== 'outside' || bare(textOf(link)) === bare(link.url)) return;
    link.children.push({type: 'text', value: ' '}, small(`(${link.url.replace(/^mailto:/, '')})`));
  });
};

/** An address as people write it: without its scheme and the slash at its end. */
function bare(address: string): string {
  return address
    .trim()
    .toLowerCase()
    .replace(/^(?:https?:\/\/|mailto:)/, '')
    .replace(/\/$/, '');
}

function small(value: string): Emphasis {
  return {type: 'emphasis', data: {hName: 'small'}, children: [{type: 'text', value}]};
}
