import type {ItemOfKind} from '../../model/binder.ts';
import type {ComposedItem, SafeHtml} from '../../model/composed.ts';
import {type Fact, patternFacts} from './facts.ts';
import {type ItemHeading, itemHeading} from './item-heading.ts';
import {
  type PhotoRowView,
  type ProseView,
  photoViews,
  proseView,
  type TechniqueView,
  techniqueViews,
} from './item-parts.ts';

export interface PatternView {
  readonly heading: ItemHeading;
  readonly facts: readonly Fact[];
  readonly techniques: readonly TechniqueView[];
  readonly prose: ProseView | null;
  readonly photos: readonly PhotoRowView[];
  /** Numbered from 1, where the citation style sets notes. */
  readonly notes: readonly SafeHtml[];
  readonly references: SafeHtml | null;
}

export function patternView(item: ItemOfKind<'pattern'>, composed: ComposedItem): PatternView {
  return {
    heading: itemHeading(item),
    facts: patternFacts(item),
    techniques: techniqueViews(composed),
    prose: proseView(composed, 'Instructions'),
    photos: photoViews(composed.photos),
    notes: composed.notes,
    references: composed.references,
  };
}
