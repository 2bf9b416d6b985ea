import {concordance} from '../../model/concordance.ts';
import {setTypography} from '../../support/typography.ts';
import {itemAnchor} from '../item-anchor.ts';
import type {LayoutInput} from '../layout-input.ts';

/** The appendix of techniques: which source describes each, under which name, and which item uses it. */
export interface ConcordanceView {
  readonly techniques: readonly {
    readonly name: string;
    /** How many lines the technique takes. */
    readonly lines: number;
    readonly hasOneSource: boolean;
    readonly first: ConcordanceLine | null;
    readonly others: readonly ConcordanceLine[];
  }[];
}

interface ConcordanceLine {
  readonly source: string;
  /** A dash where it was not noted. */
  readonly calledThere: string;
  readonly where: string;
  readonly id: string;
  readonly anchor: string | null;
}

/** Whether the binder prints the appendix: where it is asked for, and anything stands in it. */
export function hasConcordance({binder}: LayoutInput): boolean {
  const isAsked = binder.settings.appendices.includes('concordance');
  return isAsked && binder.items.some(({citations}) => citations.some(({technique}) => technique !== null));
}

export function concordanceView(input: LayoutInput): ConcordanceView {
  return {
    techniques: concordance(input.binder).map(({technique, uses, sources}) => {
      const lines = uses.map(({source, calledThere, where, itemId}) => ({
        source: setTypography(source),
        calledThere: setTypography(calledThere ?? '–'),
        where: setTypography(where ?? '–'),
        id: itemId,
        anchor: itemAnchor(input, itemId),
      }));
      const [first = null, ...others] = lines;
      return {
        name: setTypography(technique),
        lines: lines.length,
        hasOneSource: sources === 1,
        first,
        others,
      };
    }),
  };
}
