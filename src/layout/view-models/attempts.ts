import type {SafeHtml} from '../../model/composed.ts';
import {setTypography} from '../../support/typography.ts';
import {itemAnchor} from '../item-anchor.ts';
import type {LayoutInput} from '../layout-input.ts';

/** The appendix of attempts: the items of which any are recorded. */
export interface AttemptsView {
  readonly items: readonly {
    readonly id: string;
    readonly title: string;
    readonly anchor: string | null;
    readonly html: SafeHtml;
  }[];
}

/** Whether the binder prints the appendix: where it is asked for, and anything stands in it. */
export function hasAttempts(input: LayoutInput): boolean {
  const isAsked = input.binder.settings.appendices.includes('attempts');
  return isAsked && attemptsView(input).items.length > 0;
}

export function attemptsView(input: LayoutInput): AttemptsView {
  return {
    items: [...input.composed.values()].flatMap(({item, attempts}) =>
      attempts === null || item.requirement === null
        ? []
        : [
            {
              id: item.id,
              title: setTypography(item.title),
              anchor: itemAnchor(input, item.id),
              html: attempts,
            },
          ],
    ),
  };
}
