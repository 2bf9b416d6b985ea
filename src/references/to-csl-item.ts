import type {CitationStyle} from './citation-style.ts';
import {readDoi} from './identifiers.ts';
import type {Source, SourceDate, SourceName} from './source.ts';
import {shortTitle} from './source-label.ts';
import {toCslName} from './to-csl-name.ts';
import {toCslText} from './to-csl-text.ts';

/**
 * A source as the citation processor wants it: a fresh copy, since the processor writes into what it is given.
 *
 * The candidate's own `note` and `shelf` stay at home (the processor would read `note` for hidden fields). A title with
 * a subtitle gets its short form. A DOI loses its address form, which the styles add themselves. Only the author–date
 * style names a director, so in the others a director without an author is one.
 */
export function toCslItem(
  source: Source,
  id: string,
  style: CitationStyle,
): Readonly<Record<string, unknown>> {
  const directorAsAuthor = style === 'author-date' ? undefined : namesOf(source.director);
  const item = {
    ...source,
    id,
    system_id: id,
    'title-short': shortTitle(source.title ?? '') ?? undefined,
    author: namesOf(source.author) ?? directorAsAuthor,
    editor: namesOf(source.editor),
    translator: namesOf(source.translator),
    director: namesOf(source.director),
    interviewer: namesOf(source.interviewer),
    issued: dateOf(source.issued),
    accessed: dateOf(source.accessed),
    'original-date': dateOf(source['original-date']),
    DOI: bareDoi(source.DOI),
    language:
      source.language && /^[a-z]{2,3}(?:-[a-z\d]+)*$/i.test(source.language) ? source.language : undefined,
    note: undefined,
    shelf: undefined,
  };
  const fields = Object.entries(item).map(
    ([field, value]) => [field, typeof value === 'string' ? toCslText(value) : value] as const,
  );
  return Object.fromEntries(fields.filter(([, value]) => value !== undefined && value !== ''));
}

function namesOf(names: readonly SourceName[] = []) {
  const known = names.map(toCslName).filter((name) => name !== null);
  return known.length === 0 ? undefined : known;
}

/** The processor refuses a range whose ends are not equally exact: `2010/2011-03` becomes `2010/2011`. */
function dateOf(date: SourceDate | undefined): SourceDate | undefined {
  if (date === undefined) return undefined;
  const ends = date['date-parts'].slice(0, 2);
  const exactness = Math.min(...ends.map((end) => end.length));
  return {...date, 'date-parts': ends.map((end) => end.slice(0, exactness))};
}

function bareDoi(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const doi = readDoi(text);
  return doi.ok ? doi.value : text;
}
