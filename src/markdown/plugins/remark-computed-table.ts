import type {ElementContent} from 'hast';
import type {Root} from 'mdast';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import type {ComposeContext} from '../compose-context.ts';
import {unknownDirective} from '../unknown-directive.ts';

/** `::gauge` and its like become the tables that the lookup computes, blocks that are drawn their drawings, and `::pagebreak` begins a new page. */
export const remarkComputedTable: Plugin<[ComposeContext], Root> =
  ({lookups, slots, report}) =>
  (tree) => {
    visit(tree, 'code', (node, index, parent) => {
      const drawn = parent && index !== undefined && node.lang ? lookups.block(node.lang, node.value) : null;
      if (drawn && parent && index !== undefined) parent.children[index] = slots.keep(drawn.content, node);
    });
    visit(tree, 'containerDirective', (node) => {
      report(node, unknownDirective(node.name));
    });
    visit(tree, 'leafDirective', (node, index, parent) => {
      if (!parent || index === undefined) return;
      if (node.name === 'pagebreak') {
        parent.children[index] = slots.keep([pageBreak]);
        return;
      }
      const attributes = Object.entries(node.attributes ?? {}).map(([name, value]) => [name, value ?? '']);
      const table = lookups.table(node.name, Object.fromEntries(attributes));
      if (table === null) report(node, unknownDirective(node.name));
      for (const problem of table?.problems ?? []) report(node, {rule: 'computed-table', ...problem});
      parent.children[index] = slots.keep(table?.content ?? [], node);
    });
  };

const pageBreak: ElementContent = {
  type: 'element',
  tagName: 'div',
  properties: {className: ['page-break'], style: 'break-after: page'},
  children: [],
};
