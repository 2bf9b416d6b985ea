/** What a locator points at; how each is written stands in `locator-labels.ts`. */
export type LocatorLabel =
  | 'page'
  | 'chapter'
  | 'figure'
  | 'time'
  | 'volume'
  | 'issue'
  | 'section'
  | 'plate'
  | 'table'
  | 'paragraph';

export interface Locator {
  readonly label: LocatorLabel;
  /** As written, with an en dash in ranges: `57`, `112–114`, `3:20`. */
  readonly value: string;
}
