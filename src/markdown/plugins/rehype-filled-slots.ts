import type {Root} from 'hast';
import type {Plugin} from 'unified';
import {SKIP, visit} from 'unist-util-visit';
import type {Slots} from '../slots.ts';

/** Puts content of ours in the places kept for it. Runs after sanitising: it is what the author cannot write. */
export const rehypeFilledSlots: Plugin<[Slots], Root> = (slots) => (tree) => {
  visit(tree, 'element', (node, index, parent) => {
    if (!parent || index === undefined || node.tagName !== 'slot') return;
    const content = structuredClone(slots.contentOf(node.properties.name));
    const [first] = content;
    if (first !== undefined && node.position) first.position ??= node.position;
    parent.children.splice(index, 1, ...content);
    return [SKIP, index + content.length];
  });
};
