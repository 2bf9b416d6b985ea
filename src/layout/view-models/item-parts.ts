import type {Item} from '../../model/binder.ts';
import type {ComposedItem, ListedPhoto, SafeHtml, ScaleBar} from '../../model/composed.ts';
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
  /** Such as `Before blocking`. */
  readonly taken: string | null;
  readonly scaleBar: ScaleBarView | null;
}

/** A drawing as wide as its picture, in millimetres, so that both shrink together where room is short. */
export interface ScaleBarView {
  readonly words: string;
  readonly viewBox: string;
  readonly outline: string;
  /** Where the words begin. */
  readonly end: number;
}

/** Photos that stand in one row whatever room there is, or one alone. */
export interface PhotoRowView {
  readonly isPair: boolean;
  readonly photos: readonly PhotoView[];
}

export function photoViews(rows: readonly (readonly ListedPhoto[])[]): readonly PhotoRowView[] {
  let number = 0;
  return rows.map((photos) => ({
    isPair: photos.length > 1,
    photos: photos.map(({source, description, widthMillimetres, taken, scaleBar}) => {
      number += 1;
      return {
        source,
        description: setTypography(description),
        width: widthMillimetres,
        number,
        taken: taken && taken.charAt(0).toUpperCase() + taken.slice(1),
        scaleBar: scaleBar && scaleBarView(scaleBar, widthMillimetres),
      };
    }),
  }));
}

/** A bar between two ticks, all within its length. */
function scaleBarView({millimetres, words}: ScaleBar, width: number): ScaleBarView {
  const [end, inner] = [millimetres, millimetres - 0.3].map((each) => Math.round(each * 1000) / 1000);
  return {
    words: setTypography(words),
    viewBox: `0 0 ${width} 4`,
    outline: `M0 .8H.3V1.7H${inner}V.8H${end}V3.2H${inner}V2.3H.3V3.2H0Z`,
    end: Math.round((millimetres + 1.5) * 1000) / 1000,
  };
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
