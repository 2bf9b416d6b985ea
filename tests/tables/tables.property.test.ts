import fc from 'fast-check';
import {expect, test} from 'vitest';
import {lookUpTable, tables} from '../../src/tables/index.ts';
import {gaugeCount, writtenNumber} from '../knitting/arbitraries.ts';
import {sampleBinder} from '../support/sample-binder.ts';
import {showHtml} from '../support/show-html.ts';

const counts = fc.array(
  gaugeCount.map(({text}) => text),
  {maxLength: 6},
);
const edge = fc.option(
  fc.tuple(writtenNumber, fc.constantFrom('cm', 'in', 'mm')).map(([{text}, unit]) => `${text} ${unit}`),
  {nil: undefined},
);
const measurement = fc.record({
  when: fc.constantFrom('before blocking', 'after blocking'),
  stitches: counts,
  rows: counts,
  size: fc.record({top: edge, bottom: edge, left: edge, right: edge}),
});
const swatch = fc.record({
  kind: fc.constant('swatch' as const),
  requirement: fc.constant('S-01'),
  yarn: fc.record({weight: fc.integer({min: 0, max: 7})}),
  measured: fc.array(measurement, {maxLength: 4}),
});

test('whatever was measured, every table gives content or problems, never both, and no number is missing', () => {
  fc.assert(
    fc.property(swatch, fc.constantFrom('metric' as const, 'inch' as const), (item, units) => {
      const binder = sampleBinder({units, items: [item]});
      const [first] = binder.items;
      for (const {id} of tables) {
        const result = first && lookUpTable(binder, first)(id, {});
        expect(result?.content.length).toBe(result?.problems.length === 0 ? 1 : 0);
        expect(showHtml(result?.content ?? [])).not.toMatch(/NaN|Infinity|undefined|null/);
      }
    }),
  );
});

test('the unit that stands first changes the order and no number', () => {
  fc.assert(
    fc.property(swatch, (item) => {
      const cells = (units: 'metric' | 'inch') => {
        const binder = sampleBinder({units, items: [item]});
        const [first] = binder.items;
        const content = first ? lookUpTable(binder, first)('size', {})?.content : undefined;
        const html = showHtml(content ?? []);
        return [...html.matchAll(/<td>(.*?)<\/td>/g)].map(([, cell = '']) =>
          cell.replace(')', '').split(' (').sort().join(' | '),
        );
      };
      expect(cells('inch')).toEqual(cells('metric'));
    }),
  );
});
