import {type SourceType, sourceTypes} from '../source.ts';

/**
 * The nearest of our types for the types of CSL 1.0.2 (appendix III) that the library does not have. Nothing becomes a
 * book here that is not one: books are what a syllabus counts. Common practice, no source.
 */
const nearest: Readonly<Record<string, SourceType>> = {
  article: 'article-journal',
  bill: 'report',
  classic: 'book',
  collection: 'manuscript',
  dataset: 'report',
  entry: 'entry-encyclopedia',
  'entry-dictionary': 'entry-encyclopedia',
  event: 'speech',
  figure: 'graphic',
  hearing: 'report',
  legal_case: 'report',
  legislation: 'report',
  map: 'graphic',
  musical_score: 'pamphlet',
  'paper-conference': 'chapter',
  patent: 'report',
  performance: 'speech',
  periodical: 'article-magazine',
  post: 'post-weblog',
  regulation: 'report',
  review: 'article-journal',
  'review-book': 'article-journal',
  software: 'webpage',
  song: 'broadcast',
  standard: 'report',
  treaty: 'report',
};

/** The library's type for a type of CSL; `document`, and what CSL does not know, is a web page when it has an address, else a pamphlet. */
export function sourceTypeFor(type: unknown, hasAddress: boolean): SourceType {
  const own = sourceTypes.find((each) => each === type);
  if (own !== undefined) return own;
  const near = typeof type === 'string' && Object.hasOwn(nearest, type) ? nearest[type] : undefined;
  return near ?? (hasAddress ? 'webpage' : 'pamphlet');
}
