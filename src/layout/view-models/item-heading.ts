import type {Item} from '../../model/binder.ts';
import {setTypography} from '../../support/typography.ts';
import {kindWords} from './kind-words.ts';
import {latestRework} from './rework-round.ts';

/** What stands at the top of every item's sheet. */
export interface ItemHeading {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** What the certificate asks for. */
  readonly asks: string | null;
  /** Set on items that are sent again. */
  readonly round: number | null;
}

export function itemHeading(item: Item): ItemHeading {
  const asks = item.requirement?.asks ?? null;
  return {
    id: item.id,
    title: setTypography(item.title),
    kind: kindWords[item.kind],
    asks: asks === null ? null : setTypography(asks),
    round: latestRework(item)?.round ?? null,
  };
}
