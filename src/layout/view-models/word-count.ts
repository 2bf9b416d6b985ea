import type {Item} from '../../model/binder.ts';
import {askedRange, groupThousands} from '../../support/asked-range.ts';

/** How many words the item has and how many are asked, such as `1,048 words; 900 to 1,200 asked`. Null without a limit. */
export function wordCount(item: Item): string | null {
  const asked = wordsAsked(item);
  return asked === null ? null : `${groupThousands(item.body.words)} words; ${asked} asked`;
}

/** The word limit in words, such as `900 to 1,200` or `up to 500`. */
export function wordsAsked(item: Item): string | null {
  return askedRange(item.requirement?.limits.words ?? {});
}
