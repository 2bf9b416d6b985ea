import type {Item} from '../../model/binder.ts';

/** `1204` → `1,204`. */
export function groupThousands(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}

/** How many words the item has and how many are asked, such as `1,048 words; 900 to 1,200 asked`. Null without a limit. */
export function wordCount(item: Item): string | null {
  const asked = wordsAsked(item);
  return asked === null ? null : `${groupThousands(item.body.words)} words; ${asked} asked`;
}

/** The word limit in words, such as `900 to 1,200` or `up to 500`. */
export function wordsAsked(item: Item): string | null {
  const {from, to} = item.requirement?.limits.words ?? {};
  if (from !== undefined && to !== undefined) return `${groupThousands(from)} to ${groupThousands(to)}`;
  if (from !== undefined) return `at least ${groupThousands(from)}`;
  if (to !== undefined) return `up to ${groupThousands(to)}`;
  return null;
}
