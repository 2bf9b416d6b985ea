import type {Requirement} from '../../model/binder.ts';
import {setTypography} from '../../support/typography.ts';
import {itemAnchor} from '../item-anchor.ts';
import type {LayoutInput} from '../layout-input.ts';

/** Where a reader turns to: an item's first leaf. It needs no page counts, since every item starts at 1. */
export interface LeafReference {
  readonly id: string;
  readonly title: string;
  readonly leaf: string;
  /** Null when the binder has no sheet of it. */
  readonly anchor: string | null;
}

export function leafReference(
  input: LayoutInput,
  {id, title}: Pick<Requirement, 'id' | 'title'>,
): LeafReference {
  return {id, title: setTypography(title), leaf: firstLeaf(id), anchor: itemAnchor(input, id)};
}

export function firstLeaf(id: string): string {
  return `${id} · 1`;
}
