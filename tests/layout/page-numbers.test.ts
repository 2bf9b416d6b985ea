import fc from 'fast-check';
import {expect, test} from 'vitest';
import {pageCounts} from '../../src/layout/page-counts.ts';
import {pageLabels} from '../../src/layout/page-labels.ts';
import type {Sheet} from '../../src/layout/printable.ts';

function sheet(label: string, blank = false): Sheet {
  return {anchor: blank ? `back-of-${label}` : `sheet-${label}`, label, title: '', blank};
}

function startsOf(sheets: readonly Sheet[], lengths: readonly number[]): ReadonlyMap<string, number> {
  const before = (index: number) => lengths.slice(0, index).reduce((sum, length) => sum + length, 0);
  return new Map(sheets.map(({anchor}, index) => [anchor, before(index)]));
}

test('every page has the label and number of its sheet; a blank back has no number', () => {
  const sheets = [sheet('Contents'), sheet('S-07'), sheet('S-07', true), sheet('S-08')];
  const starts = new Map([
    ['sheet-Contents', 0],
    ['sheet-S-07', 2],
    ['back-of-S-07', 5],
    ['sheet-S-08', 6],
  ]);
  expect(pageLabels(sheets, starts, 7)).toEqual([
    'Contents · 1 of 2',
    'Contents · 2 of 2',
    'S-07 · 1 of 3',
    'S-07 · 2 of 3',
    'S-07 · 3 of 3',
    'S-07 · back',
    'S-08 · 1 of 1',
  ]);
  expect([...pageCounts(sheets, starts, 7)]).toEqual([
    ['sheet-Contents', 2],
    ['sheet-S-07', 3],
    ['sheet-S-08', 1],
  ]);
});

test('there is one label a page, and the counts with the blank backs add up to the pages', () => {
  const lengths = fc.array(fc.record({pages: fc.integer({min: 1, max: 9}), blank: fc.boolean()}), {
    minLength: 1,
  });
  fc.assert(
    fc.property(lengths, (list) => {
      const sheets = list.map(({blank}, index) => sheet(`S-${index}`, blank));
      const pages = list.map((one) => (one.blank ? 1 : one.pages));
      const total = pages.reduce((sum, count) => sum + count, 0);
      const starts = startsOf(sheets, pages);
      const counted = [...pageCounts(sheets, starts, total).values()].reduce((sum, count) => sum + count, 0);
      expect(pageLabels(sheets, starts, total)).toHaveLength(total);
      expect(counted + list.filter(({blank}) => blank).length).toBe(total);
    }),
  );
});

test('two sheets on one page, or a sheet that was not found, are bugs of ours', () => {
  const sheets = [sheet('S-01'), sheet('S-02')];
  expect(() => pageLabels(sheets, new Map([['sheet-S-01', 0]]), 2)).toThrow('sheet-S-02 was not found');
  const same = new Map([
    ['sheet-S-01', 0],
    ['sheet-S-02', 0],
  ]);
  expect(() => pageLabels(sheets, same, 1)).toThrow('sheet-S-01 does not begin on a page of its own');
});
