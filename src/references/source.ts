/** A name in CSL's terms. `literal` is for bodies and single names. */
export interface SourceName {
  readonly family?: string | undefined;
  readonly given?: string | undefined;
  readonly literal?: string | undefined;
  readonly 'non-dropping-particle'?: string | undefined;
  readonly 'dropping-particle'?: string | undefined;
  readonly suffix?: string | undefined;
}

/** Year, month, day as far as known, as in CSL-JSON. */
export interface SourceDate {
  readonly 'date-parts': readonly (readonly number[])[];
  readonly circa?: boolean | undefined;
}

/** The source types we know, from the CSL 1.0.2 specification, appendix III. */
export const sourceTypes = [
  'book',
  'chapter',
  'article-journal',
  'article-magazine',
  'article-newspaper',
  'pamphlet',
  'webpage',
  'post-weblog',
  'motion_picture',
  'broadcast',
  'interview',
  'manuscript',
  'thesis',
  'report',
  'entry-encyclopedia',
  'speech',
  'personal_communication',
  'graphic',
] as const;
export type SourceType = (typeof sourceTypes)[number];

/** Source types that count where a syllabus asks for books. */
export const bookTypes: readonly SourceType[] = ['book', 'chapter', 'entry-encyclopedia'];

/** An entry of the candidate's reference library: CSL-JSON's names and values, dates already taken apart. */
export interface Source {
  readonly id: string;
  readonly type: SourceType;
  readonly title?: string | undefined;
  readonly author?: readonly SourceName[] | undefined;
  readonly editor?: readonly SourceName[] | undefined;
  readonly translator?: readonly SourceName[] | undefined;
  readonly director?: readonly SourceName[] | undefined;
  readonly interviewer?: readonly SourceName[] | undefined;
  readonly issued?: SourceDate | undefined;
  readonly accessed?: SourceDate | undefined;
  readonly 'original-date'?: SourceDate | undefined;
  readonly edition?: string | undefined;
  readonly 'container-title'?: string | undefined;
  readonly 'collection-title'?: string | undefined;
  readonly publisher?: string | undefined;
  readonly 'publisher-place'?: string | undefined;
  readonly volume?: string | undefined;
  readonly issue?: string | undefined;
  readonly page?: string | undefined;
  readonly 'number-of-pages'?: string | undefined;
  readonly medium?: string | undefined;
  readonly genre?: string | undefined;
  readonly language?: string | undefined;
  readonly archive?: string | undefined;
  readonly URL?: string | undefined;
  readonly DOI?: string | undefined;
  readonly ISBN?: string | undefined;
  readonly ISSN?: string | undefined;
  readonly note?: string | undefined;
  /** Where the candidate finds it again: their own shelf, a library, or online. Ours, not CSL's. */
  readonly shelf?: 'own' | 'library' | 'online' | undefined;
}
