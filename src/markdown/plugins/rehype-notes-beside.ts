import type {Element, ElementContent, Root, RootContent} from 'hast';
import {h} from 'hastscript';
import type {Finding} from '../../diagnostics/finding.ts';
import {findingNote} from '../finding-note.ts';

/** A block that can have notes beside it: a child of the text itself, or an item of a list that is. */
interface Block {
  readonly element: Element;
  readonly line: number;
}

/**
 * Sets each finding beside the block that caused it: the last that begins on its line or before. A list counts item by
 * item, and what is found in a heading stands beside the text below it, which stays on its page.
 */
export function rehypeNotesBeside({notes}: {readonly notes: readonly Finding[]}) {
  return (tree: Root): void => {
    if (notes.length === 0) return;
    const blocks = tree.children.filter(isElement).flatMap(blocksOf);
    const beside = new Map<Element | null, ElementContent[]>();
    for (const note of notes) {
      const element = blockOf(note, blocks);
      beside.set(element, [...(beside.get(element) ?? []), findingNote(note)]);
    }
    tree.children = tree.children.flatMap((child): RootContent[] => {
      if (!isElement(child)) return [child];
      for (const item of child.children.filter(isElement)) {
        const own = beside.get(item);
        if (own === undefined) continue;
        item.children.unshift(...own);
        item.properties.className = [item.properties.className ?? [], 'noted'].flat().map(String);
      }
      const own = beside.get(child);
      return own === undefined ? [child] : [h('div', {className: ['noted']}, [...own, child])];
    });
    const homeless = beside.get(null);
    if (homeless !== undefined) tree.children.push(h('div', {className: ['noted']}, homeless));
  };
}

/** Null where no block follows. */
function blockOf({place}: Finding, blocks: readonly Block[]): Element | null {
  const at = Math.max(
    0,
    blocks.findLastIndex(({line}) => line <= place.line),
  );
  return blocks.slice(at).find(({element}) => !/^h[1-6]$/.test(element.tagName))?.element ?? null;
}

function blocksOf(element: Element): readonly Block[] {
  const items = /^[uo]l$/.test(element.tagName) ? element.children.filter(isElement) : [];
  return [...(items.length === 0 ? [element] : items)].flatMap((each) =>
    each.position === undefined ? [] : [{element: each, line: each.position.start.line}],
  );
}

function isElement(node: RootContent | ElementContent): node is Element {
  return node.type === 'element';
}
