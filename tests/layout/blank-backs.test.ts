import fc from 'fast-check';
import {expect, test} from 'vitest';
import {type PlannedSheet, plainPage, withBlankBacks} from '../../src/layout/planned-sheet.ts';

function planned(index: number): PlannedSheet {
  const anchor = `sheet-S-${index}`;
  return {anchor, label: `S-${index}`, title: '', blank: false, layout: 'swatch', view: {}, page: plainPage};
}

test('printed on both sides, every sheet begins on a right-hand page, and no page is added that is not needed', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({min: 1, max: 6}), {minLength: 1}), (lengths) => {
      const sheets = lengths.map((_, index) => planned(index));
      const counts = new Map(sheets.map(({anchor}, index) => [anchor, lengths[index] ?? 0]));
      let page = 0;
      for (const sheet of withBlankBacks(sheets, counts)) {
        // Pages are counted from 0 here, so right-hand pages are the even ones.
        expect(page % 2).toBe(sheet.blank ? 1 : 0);
        page += sheet.blank ? 1 : (counts.get(sheet.anchor) ?? 0);
      }
    }),
  );
});

test('before the first printing nothing is inserted', () => {
  const sheets = [planned(1), planned(2)];
  expect(withBlankBacks(sheets, null)).toEqual(sheets);
});
