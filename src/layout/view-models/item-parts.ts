import type {Item} from '../../model/binder.ts';
import type {ComposedItem, ComposedPhoto, SafeHtml} from '../../model/composed.ts';
import {setTypography} from '../../support/typography.ts';

export interface TechniqueView {
  readonly name: string;
  readonly citations: SafeHtml | null;
  readonly note: string | null;
}

export function techniqueViews(composed: ComposedItem): readonly TechniqueView[] {
  return composed.techniques.map(({name, citations, note}) => ({
    name: setTypography(name),
    citations,
    note: note === null ? null : setTypography(note),
  }));
}

export interface PhotoView {
  readonly source: string;
  readonly description: string;
  readonly width: number;
  readonly number: number;
}

export function photoViews(photos: readonly ComposedPhoto[]): readonly PhotoView[] {
  return photos.map(({source, description, widthMillimetres}, index) => ({
    source,
    description: setTypography(description),
    width: widthMillimetres,
    number: index + 1,
  }));
}

/** The item's prose. It brings its own headings; one of ours goes above only where it does not begin with one. */
export interface ProseView {
  /** What this text is, such as `Answer`. */
  readonly name: string;
  readonly heading: string | null;
  readonly html: SafeHtml;
}

export function proseView(composed: ComposedItem, name: string): ProseView | null {
  if (composed.body.trim() === '') return null;
  return {name, heading: beginsWithHeading(composed.item) ? null : name, html: composed.body};
}

function beginsWithHeading({body}: Item): boolean {
  return body.tree.children.find(({type}) => type !== 'yaml')?.type === 'heading';
}
