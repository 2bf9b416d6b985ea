import fc from 'fast-check';
import {expect, test} from 'vitest';
import {lookUpTable} from '../../../src/tables/index.ts';
import {chartLikeText, soundRows} from '../../knitting/chart/arbitraries.ts';
import {sampleBinder} from '../../support/sample-binder.ts';
import {showHtml} from '../../support/show-html.ts';

const block = fc.oneof(
  soundRows.map(({text}) => ({language: 'rows', text})),
  chartLikeText.map((text) => ({language: 'rows', text})),
  chartLikeText.map((text) => ({language: 'chart', text})),
);

test('whatever stands in the block, it is drawn or refused, no number is missing and nothing is wider than the text', () => {
  fc.assert(
    fc.property(block, fc.constantFrom('chart', 'fabric', 'colour-chart'), (written, table) => {
      const measured = [{when: 'after blocking', stitches: ['20 over 10 cm'], rows: ['28 over 10 cm']}];
      const binder = sampleBinder({
        items: [{kind: 'swatch', requirement: 'S-07', blocks: [written], measured}],
      });
      const [item] = binder.items;
      const result = item && lookUpTable(binder, item)(table, {});
      expect(result?.content.length).toBe(result?.problems.length === 0 ? 1 : 0);
      const html = showHtml(result?.content ?? []);
      expect(html).not.toMatch(/NaN|Infinity|undefined|null/);
      for (const [, width] of html.matchAll(/<svg[^>]* width="([\d.]+)mm"/g)) {
        expect(Number(width)).toBeLessThanOrEqual(118);
      }
    }),
  );
});
