import type {ElementContent} from 'hast';
import type {Nodes, SlotNode} from 'mdast';

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
  /** Keeps content of ours and gives the node that stands for it; a block's content is said to stand where `block` did. */
  keep(content: readonly ElementContent[], block?: Pick<Nodes, 'position'>): SlotNode;
  contentOf(name: unknown): readonly ElementContent[];
}

/** Authors cannot write a slot: HTML of theirs never reaches the tree. */
export function createSlots(): Slots {
  const kept: (readonly ElementContent[])[] = [];
  return {
    keep(content, block) {
      kept.push(content);
      const name = String(kept.length - 1);
      return {type: 'slot', data: {hName: 'slot', hProperties: {name}}, position: block?.position};
    },
    contentOf: (name) => kept[Number(name)] ?? [],
  };
}
