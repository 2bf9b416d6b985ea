import type {CiteprocEngine} from 'citeproc';
import CSL from 'citeproc';
import fc from 'fast-check';
import {beforeAll, expect, test} from 'vitest';
import {loadCitationLocale} from '../../src/references/citation-locale.ts';
import {type CitationStyle, loadCitationStyle} from '../../src/references/citation-style.ts';
import {sharingSortMacros} from '../../src/references/share-sort-macros.ts';
import {type Source, sourceTypes} from '../../src/references/source.ts';
import {toCslItem} from '../../src/references/to-csl-item.ts';

// Few values each, so that authors, years and titles coincide and the later keys of the order count as well.
const text = fc.constantFrom('Edges', 'Hems', 'The lace: an atlas', 'Österlen ribs', '2 over 2');
const number = fc.constantFrom('1', '2', '10', '3rd', '12-14', 'iv');
const name = fc.oneof(
  fc.record({literal: fc.constantFrom('Weir Guild', 'Ashdown')}),
  fc.record(
    {
      family: fc.constantFrom('Ashdown', 'Bell', 'Ödmann'),
      given: fc.constantFrom('A', 'Wilf B.', ''),
      'non-dropping-particle': fc.constant('van'),
    },
    {requiredKeys: ['family']},
  ),
);
const names = fc.array(name, {minLength: 1, maxLength: 3});
const date = fc
  .tuple(fc.integer({min: 1999, max: 2001}), fc.integer({min: 1, max: 12}))
  .chain(([year, month]) => fc.constantFrom([year], [year, month]))
  .map((parts) => ({'date-parts': [parts]}));
const fields = {
  type: fc.constantFrom(...sourceTypes),
  title: text,
  author: names,
  editor: names,
  translator: names,
  director: names,
  interviewer: names,
  issued: date,
  accessed: date,
  'original-date': date,
  edition: number,
  'container-title': text,
  'collection-title': text,
  publisher: text,
  'publisher-place': text,
  volume: number,
  issue: number,
  page: number,
  medium: text,
  genre: text,
  archive: text,
};
const sources: fc.Arbitrary<readonly Source[]> = fc
  .array(fc.record(fields, {requiredKeys: ['type']}), {minLength: 12, maxLength: 12})
  .map((entries) => entries.map((entry, index) => ({...entry, id: String(index)})));
const clusters = fc.array(fc.uniqueArray(fc.nat({max: 11}), {minLength: 1, maxLength: 6}), {
  minLength: 1,
  maxLength: 4,
});

/** What is set by the processor as it comes and by the one whose macros are shared, for sources that may change. */
async function twoEngines(style: CitationStyle) {
  const [xml, locale] = await Promise.all([loadCitationStyle(style), loadCitationLocale('en-GB')]);
  let known: readonly Source[] = [];
  const make = () =>
    new CSL.Engine(
      {
        retrieveLocale: () => locale,
        retrieveItem: (id) => toCslItem(known[Number(id)] ?? {id, type: 'book'}, id, style),
        embedBibliographyEntry: () => '',
      },
      xml,
      'en-GB',
      true,
    );
  const engines = {alone: make(), shared: sharingSortMacros(CSL, make)};
  return {
    engines,
    know(these: readonly Source[]) {
      known = these;
    },
  };
}

function everything(engine: CiteprocEngine, cited: readonly (readonly number[])[], isNote: boolean) {
  const rows = engine.rebuildProcessorState(
    cited.map((ids, index) => ({
      citationID: String(index),
      citationItems: ids.map((id) => ({id: String(id)})),
      properties: {noteIndex: isNote ? index + 1 : 0},
    })),
    'html',
    [],
  );
  const list = engine.makeBibliography();
  return {rows, list: list === false ? [] : list[1]};
}

const made = new Map<CitationStyle, Awaited<ReturnType<typeof twoEngines>>>();
const styles = ['author-date', 'note', 'numeric'] as const;
beforeAll(async () => {
  for (const style of styles) made.set(style, await twoEngines(style));
});

test.each(styles)('%s: whatever is cited, order and words are those of the processor by itself', (style) => {
  const pair = made.get(style);
  if (pair === undefined) throw new Error('the engines were not made');
  let inOrder = 0;
  fc.assert(
    fc.property(sources, clusters, (these, cited) => {
      pair.know(these);
      const alone = everything(pair.engines.alone, cited, style === 'note');
      expect(everything(pair.engines.shared, cited, style === 'note')).toEqual(alone);
      if (cited.some((ids) => ids.length > 1)) inOrder++;
    }),
    {numRuns: 40},
  );
  expect(inOrder).toBeGreaterThan(20);
});

test('the keys of the order are a few steps, and the processor is left as it was', async () => {
  const {expandMacro} = CSL;
  const {engines} = await twoEngines('author-date');
  const steps = (engine: unknown) =>
    (engine as {bibliography_sort: {tokens: unknown[]}}).bibliography_sort.tokens.length;
  expect(steps(engines.alone)).toBeGreaterThan(10_000);
  expect(steps(engines.shared)).toBeLessThan(100);
  expect(() =>
    sharingSortMacros(CSL, () => {
      throw new Error('broken style');
    }),
  ).toThrow('broken style');
  expect(CSL.expandMacro).toBe(expandMacro);
});
