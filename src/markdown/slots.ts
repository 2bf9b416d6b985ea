import type {ElementContent} from 'hast';
import type {SlotNode} from 'mdast';

declare module 'mdast' {
  /** A place kept free while the author's part of the tree is sanitised; filled afterwards with content of our own. */
  interface SlotNode {
    type: 'slot';
    data: {hName: 'slot'; hProperties: {name: string}};
    position?: import('unist').Position | undefined;
  }
  interface PhrasingContentMap {
    slot: SlotNode;
  }
  interface BlockContentMap {
    slot: SlotNode;
  }
  interface RootContentMap {
    slot: SlotNode;
  }
}

export interface Slots {
  /** Keeps content of ours and gives the node that stands for it. */
  keep(content: readonly ElementContent[]): SlotNode;
  contentOf(name: unknown): readonly ElementContent[];
}

/** Authors cannot write a slot: HTML of theirs never reaches the tree. */
export function createSlots(): Slots {
  const kept: (readonly ElementContent[])[] = [];
  return {
    keep(content) {
      kept.push(content);
      return {type: 'slot', data: {hName: 'slot', hProperties: {name: String(kept.length - 1)}}};
    },
    contentOf: (name) => kept[Number(name)] ?? [],
  };
}
