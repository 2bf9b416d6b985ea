import type {ItemOfKind} from '../../model/binder.ts';
import type {ComposedItem, SafeHtml} from '../../model/composed.ts';
import type {BinderSettings} from '../../model/schema/binder-settings.ts';
import {type Fact, workedFacts} from './facts.ts';
import {type ItemHeading, itemHeading} from './item-heading.ts';
import {
  type PhotoRowView,
  type ProseView,
  photoViews,
  proseView,
  type TechniqueView,
  techniqueViews,
} from './item-parts.ts';

/** A sheet about a piece of knitting: a swatch or a project. */
export interface WorkedView {
  readonly heading: ItemHeading;
  readonly facts: readonly Fact[];
  readonly gauge: SafeHtml | null;
  readonly size: SafeHtml | null;
  readonly techniques: readonly TechniqueView[];
  readonly prose: ProseView | null;
  readonly photos: readonly PhotoRowView[];
  /** Numbered from 1, where the citation style sets notes. */
  readonly notes: readonly SafeHtml[];
  readonly references: SafeHtml | null;
}

export function workedView(
  item: ItemOfKind<'swatch' | 'project'>,
  composed: ComposedItem,
  language: BinderSettings['language'],
): WorkedView {
  return {
    heading: itemHeading(item),
    facts: workedFacts(item, language),
    gauge: composed.gauge,
    size: composed.size,
    techniques: techniqueViews(composed),
    prose: proseView(composed, 'Notes'),
    photos: photoViews(composed.photos),
    notes: composed.notes,
    references: composed.references,
  };
}
