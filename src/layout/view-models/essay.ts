import type {Item} from '../../model/binder.ts';
import {itemsById, requirementsOf} from '../../model/binder.ts';
import type {ComposedItem, SafeHtml} from '../../model/composed.ts';
import type {LayoutInput} from '../layout-input.ts';
import {type ItemHeading, itemHeading} from './item-heading.ts';
import {type PhotoRowView, type ProseView, photoViews, proseView} from './item-parts.ts';
import {type LeafReference, leafReference} from './leaf-reference.ts';
import {wordCount} from './word-count.ts';

/** A sheet of prose: an answer, a report or a review. */
export interface EssayView {
  readonly heading: ItemHeading;
  /** The source that a review is about. */
  readonly reviewed: SafeHtml | null;
  /** The swatches or projects that a question belongs to. */
  readonly tiedTo: readonly LeafReference[];
  readonly prose: ProseView | null;
  readonly words: string | null;
  readonly photos: readonly PhotoRowView[];
  /** Numbered from 1, where the citation style sets notes. */
  readonly notes: readonly SafeHtml[];
  readonly references: SafeHtml | null;
}

const headings: Readonly<Partial<Record<Item['kind'], string>>> = {question: 'Answer', review: 'Review'};

export function essayView(input: LayoutInput, item: Item, composed: ComposedItem): EssayView {
  return {
    heading: itemHeading(item),
    reviewed: composed.reviewed,
    tiedTo: tiedTo(input, item),
    prose: proseView(composed, headings[item.kind] ?? 'Report'),
    words: wordCount(item),
    photos: photoViews(composed.photos),
    notes: composed.notes,
    references: composed.references,
  };
}

function tiedTo(input: LayoutInput, item: Item): readonly LeafReference[] {
  const {binder} = input;
  const requirements = requirementsOf(binder);
  const items = itemsById(binder);
  return (item.requirement?.tiedTo ?? []).flatMap((id) => {
    const requirement = requirements.find((one) => one.id === id);
    const title = items.get(id)?.title ?? requirement?.title;
    return title === undefined ? [] : [leafReference(input, {id, title})];
  });
}
