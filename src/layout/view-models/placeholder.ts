import type {Requirement} from '../../model/binder.ts';
import {setType} from '../set-type.ts';
import type {ItemHeading} from './item-heading.ts';
import {kindWords} from './kind-words.ts';

/** The sheet of a draft that stands in for an item still to come. */
export interface PlaceholderView {
  readonly heading: ItemHeading;
}

export function placeholderView({id, title, kind, asks}: Requirement): PlaceholderView {
  return {
    heading: {
      id,
      title: setType(title),
      kind: kindWords[kind],
      asks: asks === null ? null : setType(asks),
      round: null,
    },
  };
}
