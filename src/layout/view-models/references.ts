import type {SafeHtml} from '../../model/composed.ts';
import {itemAnchor} from '../item-anchor.ts';
import type {LayoutInput} from '../layout-input.ts';

export interface ReferencesView {
  readonly entries: readonly {
    readonly html: SafeHtml;
    readonly usedIn: readonly {readonly id: string; readonly anchor: string | null}[];
  }[];
}

export function referencesView(input: LayoutInput): ReferencesView {
  return {
    entries: input.references.map(({html, usedIn}) => ({
      html,
      usedIn: usedIn.map((id) => ({id, anchor: itemAnchor(input, id)})),
    })),
  };
}
