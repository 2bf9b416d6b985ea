import {diffWordsWithSpace} from 'diff';
import {plainParagraphs} from '../markdown/plain-paragraphs.ts';
import type {ItemDifference, Stretch} from '../model/difference.ts';
import type {ParsedItem} from '../model/parsed-item.ts';

/** Words on each side of a change that stay, so that its place is found. */
const wordsAround = 8;

/** What the resubmission page tells in its own way, or what is not printed. */
const untold = new Set([
  'requirement',
  'kind',
  'status',
  'started',
  'finished',
  'measured',
  'rework',
  'photos',
  'attempts',
]);

/** Compares an item with the version that was sent in `round`. */
export function itemDifference(before: ParsedItem, now: ParsedItem, round: number): ItemDifference {
  return {round, paragraphs: changedParagraphs(before, now), facts: changedFacts(before, now)};
}

function changedParagraphs(before: ParsedItem, now: ParsedItem): ItemDifference['paragraphs'] {
  const [old, current] = [before, now].map(({body}) => plainParagraphs(body).join('\n'));
  const paragraphs: Stretch[][] = [[]];
  for (const {value, added, removed} of diffWordsWithSpace(old ?? '', current ?? '')) {
    const kind = added ? 'new' : removed ? 'old' : 'same';
    value.split('\n').forEach((text, index) => {
      if (index > 0) paragraphs.push([]);
      if (text !== '') paragraphs.at(-1)?.push({kind, text});
    });
  }
  return paragraphs.filter((stretches) => stretches.some(({kind}) => kind !== 'same')).map(shortened);
}

function shortened(stretches: readonly Stretch[]): readonly Stretch[] {
  return stretches.map((stretch, index) => {
    if (stretch.kind !== 'same') return stretch;
    const words = stretch.text.split(/(?<=\s)/);
    const isFirst = index === 0;
    const isLast = index === stretches.length - 1;
    const kept = (isFirst ? 0 : wordsAround) + (isLast ? 0 : wordsAround);
    if (words.length <= kept + 2) return stretch;
    const head = isFirst ? '' : words.slice(0, wordsAround).join('').trimEnd();
    const tail = isLast ? '' : words.slice(-wordsAround).join('');
    return {...stretch, text: `${head} … ${tail}`.trimStart()};
  });
}

function changedFacts(before: ParsedItem, now: ParsedItem): ItemDifference['facts'] {
  // Of a version whose fields cannot be read nothing can be said.
  if (before.yaml.problems.length > 0) return [];
  const [old, current] = [fieldsOf(before), fieldsOf(now)];
  return [...new Set([...old.keys(), ...current.keys()])]
    .filter((name) => !untold.has(name))
    .map((name) => ({label: name, before: inWords(old.get(name)), now: inWords(current.get(name))}))
    .filter((fact) => fact.before !== fact.now);
}

function fieldsOf({yaml}: ParsedItem): ReadonlyMap<string, unknown> {
  const {value} = yaml;
  return new Map(typeof value === 'object' && value !== null ? Object.entries(value) : []);
}

function inWords(value: unknown): string {
  if (value === undefined || value === null) return 'not stated';
  if (Array.isArray(value)) return value.map(inWords).join('; ');
  if (typeof value !== 'object') return String(value);
  return Object.entries(value)
    .map(([name, each]) => `${name}: ${inWords(each)}`)
    .join(', ');
}
