import fc from 'fast-check';
import {expect, test} from 'vitest';
import {paperOf, unprintableRim} from '../../src/layout/paper.ts';
import {tagDrawing} from '../../src/layout/tag-drawing.ts';
import {plainGrid, tagPlaces} from '../../src/layout/tag-grid.ts';
import {binderSettingsSchema} from '../../src/model/schema/binder-settings.ts';

const papers = (['A4', 'Letter'] as const).map((paper) => paperOf({paper, rings: 2}));
const tagSizes = fc.record({width: fc.integer({min: 30, max: 180}), height: fc.integer({min: 20, max: 250})});

test.each([
  ['A4', 90, 55, 10],
  ['Letter', 90, 55, 8],
  ['A4', 63.5, 38.1, 14],
  ['A4', 180, 270, 1],
] as const)('%s holds tags of %f × %f mm: %i', (paper, width, height, count) => {
  expect(tagPlaces(paperOf({paper, rings: 2}), {width, height})).toHaveLength(count);
});

test('tags stand side by side without overlapping, with room for cut marks within the printable area', () => {
  fc.assert(
    fc.property(fc.constantFrom(...papers), tagSizes, (paper, size) => {
      const places = tagPlaces(paper, size);
      for (const [index, {x, y}] of places.entries()) {
        expect(x).toBeGreaterThanOrEqual(unprintableRim + 3.5);
        expect(y).toBeGreaterThanOrEqual(unprintableRim + 3.5);
        expect(x + size.width).toBeLessThanOrEqual(paper.width - unprintableRim - 3.5);
        expect(y + size.height).toBeLessThanOrEqual(paper.height - unprintableRim - 3.5);
        for (const other of places.slice(index + 1)) {
          const apart =
            Math.abs(other.x - x) >= size.width - 1e-9 || Math.abs(other.y - y) >= size.height - 1e-9;
          expect(apart).toBe(true);
        }
      }
    }),
  );
});

/** Tags of a size on plain paper. */
function gridOf(paper: 'A4' | 'Letter', tags: object) {
  const settings = {candidate: {name: 'A'}, certificate: {name: 'B'}, date: '2026-09-28', paper, tags};
  return plainGrid(binderSettingsSchema.parse(settings));
}

test('every tag has one hole, wholly within it', () => {
  fc.assert(
    fc.property(fc.constantFrom('A4', 'Letter'), tagSizes, (paper, {width, height}) => {
      const grid = gridOf(paper, {width: `${width} mm`, height: `${height} mm`});
      const {holes} = tagDrawing(grid, grid.places);
      expect(holes).toHaveLength(grid.places.length);
      holes.forEach(({x, y, radius}, index) => {
        const tag = grid.places[index];
        expect(tag && x - radius > tag.x && x + radius < tag.x + tag.width).toBe(true);
        expect(tag && y - radius > tag.y && y + radius < tag.y + tag.height).toBe(true);
      });
    }),
  );
});

test('no hole is marked where none is wished for', () => {
  const grid = gridOf('A4', {hole: false});
  expect(tagDrawing(grid, grid.places).holes).toEqual([]);
});

test('a folded tag takes twice its height: 2 × 2 of 90 × 55 mm on A4', () => {
  const {places} = gridOf('A4', {reverse: 'folded'});
  expect(places.map(({x, y, height}) => [x, y, height])).toEqual([
    [15, 38.5, 110],
    [105, 38.5, 110],
    [15, 148.5, 110],
    [105, 148.5, 110],
  ]);
});
