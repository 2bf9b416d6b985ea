import type {Element, ElementContent} from 'hast';
import type {Root} from 'mdast';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import type {ComposeContext} from '../compose-context.ts';

/** A `rows` block becomes a list of instructions, each with its label (`Row 1 (RS):`) set off. */
export const remarkWrittenRows: Plugin<[ComposeContext], Root> =
  ({slots}) =>
  (tree) => {
    visit(tree, 'code', (node, index, parent) => {
      if (!parent || index === undefined || node.lang !== 'rows') return;
      const list = element('ul', {className: ['rows']}, writtenRows(node.value).map(listItem));
      parent.children[index] = slots.keep([list]);
    });
  };

/** One text for each row: an indented line goes on with the line before it, an empty line is left out. */
function writtenRows(block: string): readonly string[] {
  const rows: string[] = [];
  for (const line of block.split('\n')) {
    const text = line.trim();
    const before = rows.at(-1);
    if (text === '') continue;
    if (/^\s/.test(line) && before !== undefined) rows[rows.length - 1] = `${before} ${text}`;
    else rows.push(text);
  }
  return rows;
}

function listItem(row: string): Element {
  const label = /^[^:]{1,60}:(?=\s|$)/.exec(row)?.[0];
  if (!label) return element('li', {}, [{type: 'text', value: row}]);
  const strong = element('strong', {}, [{type: 'text', value: label}]);
  return element('li', {}, [strong, {type: 'text', value: row.slice(label.length)}]);
}

function element(
  tagName: string,
  properties: Element['properties'],
  children: readonly ElementContent[],
): Element {
  return {type: 'element', tagName, properties, children: [...children]};
}
