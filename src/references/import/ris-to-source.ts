import type {CitationParsers} from './citation-parsers.ts';
import type {RisRecord} from './read-ris.ts';
import {listTags, risToCsl} from './ris-to-csl.ts';
import {type ReadSource, toSource} from './to-source.ts';

/** A RIS record as a source. Tags without which the source would be the same were dropped. */
export function risToSource(record: RisRecord, parsers: CitationParsers): ReadSource {
  const sourceOf = (lines: RisRecord['lines']) =>
    toSource(risToCsl({...record, lines}, parsers), record.type);
  const {source, dropped, changed} = sourceOf(record.lines);
  const whole = JSON.stringify(source);
  const written = record.lines.filter(({tag, text}) => text !== '' && tag !== 'ID').map(({tag}) => tag);
  const tags = [...new Set(written)].slice(0, mostTags);
  const without = (tag: string) => sourceOf(record.lines.filter((line) => line.tag !== tag)).source;
  const idle = tags.filter((tag) => JSON.stringify(without(tag)) === whole);
  const repeated = tags.filter(
    (tag) => !idle.includes(tag) && !listTags.has(tag) && written.indexOf(tag) !== written.lastIndexOf(tag),
  );
  // A field that is named with its value, such as an address that is none, says more than its tag.
  const reasons = dropped.filter((field) => field.includes('`'));
  return {
    source,
    dropped: [...idle, ...repeated.map((tag) => `${tag} after the first`), ...reasons],
    changed,
  };
}

const mostTags = 100;
