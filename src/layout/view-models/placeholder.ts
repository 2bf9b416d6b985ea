import type {Requirement} from '../../model/binder.ts';
import {setTypography} from '../../support/typography.ts';
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
      title: setTypography(title),
      kind: kindWords[kind],
      asks: asks === null ? null : setTypography(asks),
      round: null,
    },
  };
}
