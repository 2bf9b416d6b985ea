/** A stretch of text that stands in both versions, only in the new one, or only in the old one. */
export interface Stretch {
  readonly kind: 'same' | 'new' | 'old';
  readonly text: string;
}

/** What has changed in an item since it was last sent. */
export interface ItemDifference {
  /** The round in which the old version was sent. */
  readonly round: number;
  /** Paragraph by paragraph; a long stretch that did not change is cut short. Empty when no word changed. */
  readonly paragraphs: readonly (readonly Stretch[])[];
  /** Fields of the front matter that changed. */
  readonly facts: readonly {readonly label: string; readonly before: string; readonly now: string}[];
}
