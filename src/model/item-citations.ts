import type {Places, YamlPath} from '../yaml/places.ts';
import type {CitationUse, Item} from './binder.ts';
import type {Body} from './body.ts';
import {readCitations} from './read-citations.ts';
import type {ReadingFault} from './reading-rules.ts';
import {isStubText} from './stub-text.ts';

/** The citations in the fields of an item: under its techniques, and the source that a review is about. */
export function frontMatterCitations(
  fields: Item['fields'],
  places: Places,
): {readonly citations: readonly CitationUse[]; readonly faults: readonly ReadingFault[]} {
  const citations: CitationUse[] = [];
  const faults: ReadingFault[] = [];

  function read(
    text: string,
    path: YamlPath,
    use: Pick<CitationUse, 'from' | 'technique' | 'calledThere'>,
  ): void {
    if (isStubText(text)) return;
    const result = readCitations(text, (start, end) => places.within(path, start, end));
    for (const problem of result.problems) faults.push({rule: 'citation-form', ...problem});
    for (const {citation, whole, key} of result.citations) {
      citations.push({citation, ...use, place: whole, keyPlace: key});
    }
  }

  const techniques = 'techniques' in fields ? fields.techniques : [];
  for (const [index, {name, cite = []}] of techniques.entries()) {
    for (const [number, {source, as}] of cite.entries()) {
      const path = ['techniques', index, 'cite', number];
      const inMapping = [...path, 'source'];
      read(source, places.has(inMapping) ? inMapping : path, {
        from: 'technique',
        technique: name,
        calledThere: as ?? null,
      });
    }
  }
  if ('reviews' in fields && fields.reviews !== undefined) {
    read(fields.reviews, ['reviews'], {from: 'reviews', technique: null, calledThere: null});
  }
  return {citations, faults};
}

export function bodyCitations(body: Body): readonly CitationUse[] {
  return body.clusters.flatMap(({citationPlaces}) =>
    citationPlaces.map(({citation, whole, key}) => ({
      citation,
      technique: null,
      from: 'body' as const,
      calledThere: null,
      place: whole,
      keyPlace: key,
    })),
  );
}
