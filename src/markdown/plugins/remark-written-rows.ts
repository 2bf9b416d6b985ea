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
      const fence = node.position?.start.line ?? 0;
      const items = writtenRows(node.value).map((row) => listItem(row, fence));
      parent.children[index] = slots.keep([element('ul', {className: ['rows']}, items)], node);
    });
  };

/** A row and the line of the block on which it begins, from 1. */
interface WrittenRow {
  readonly text: string;
  readonly line: number;
}

/** One text for each row: an indented line goes on with the line before it, an empty line is left out. */
function writtenRows(block: string): readonly WrittenRow[] {
  const rows: WrittenRow[] = [];
  for (const [index, line] of block.split('\n').entries()) {
    const text = line.trim();
    const before = rows.at(-1);
    if (text === '') continue;
    if (/^\s/.test(line) && before !== undefined)
      rows[rows.length - 1] = {...before, text: `${before.text} ${text}`};
    else rows.push({text, line: index + 1});
  }
  return rows;
}

/** `fence` is the line of the file above the block's first. */
function listItem({text: row, line}: WrittenRow, fence: number): Element {
  const label = /^[^:]{1,60}:(?=\s|$)/.exec(row)?.[0];
  const strong = label === undefined ? [] : [element('strong', {}, [{type: 'text', value: label}])];
  const rest: ElementContent = {type: 'text', value: row.slice(label?.length ?? 0)};
  const place = {line: fence + line, column: 1};
  return {...element('li', {}, [...strong, rest]), position: {start: place, end: place}};
}

function element(
  tagName: string,
  properties: Element['properties'],
  children: readonly ElementContent[],
): Element {
  return {type: 'element', tagName, properties, children: [...children]};
}
