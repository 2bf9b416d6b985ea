import {expect, test} from 'vitest';
import {paperOf, unprintableRim} from '../../src/layout/paper.ts';
import {tabPlace} from '../../src/layout/tab-place.ts';

test.each([
  // ISO 216:2007, table 1.
  ['A4', 210, 297],
  // ASME Y14.1, size A: 8.5 × 11 in of 25.4 mm.
  ['Letter', 8.5 * 25.4, 11 * 25.4],
] as const)('%s is %f × %f mm', (paper, width, height) => {
  const sheet = paperOf({paper, rings: 2});
  expect(sheet.width).toBeCloseTo(width, 10);
  expect(sheet.height).toBeCloseTo(height, 10);
});

test.each([
  // ISO 838:1974: two holes 80 mm apart, 12 mm from the edge, the middle of the sheet between them.
  ['A4', 2, [80], 12],
  // The same with one more on either side, 80 mm off: common practice, no source.
  ['A4', 4, [80, 80, 80], 12],
  // US three-ring binders: 4¼ in apart, ½ in from the edge: common practice, no source.
  ['Letter', 3, [4.25 * 25.4, 4.25 * 25.4], 0.5 * 25.4],
] as const)('%s with %i rings has its holes %j mm apart', (paper, rings, apart, fromEdge) => {
  const sheet = paperOf({paper, rings});
  const [first = 0] = sheet.holesFromTop;
  const gaps = sheet.holesFromTop.slice(1).map((hole, index) => hole - (sheet.holesFromTop[index] ?? 0));
  gaps.forEach((gap, index) => {
    expect(gap).toBeCloseTo(apart[index] ?? 0, 10);
  });
  expect(gaps).toHaveLength(apart.length);
  expect(sheet.holesFromEdge).toBeCloseTo(fromEdge, 10);
  expect(first + (sheet.holesFromTop.at(-1) ?? 0)).toBeCloseTo(sheet.height, 10);
});

test.each([1, 3, 5, 8, 13])('the tabs of %i sections stand one below the other, clear of the rim', (of) => {
  const paper = paperOf({paper: 'A4', rings: 2});
  const places = Array.from({length: of}, (_, index) => tabPlace({number: index + 1, of}, paper));
  places.forEach(({x, y, width, height}, index) => {
    const next = places[index + 1];
    expect(x + width).toBeCloseTo(paper.width - unprintableRim, 10);
    expect(y).toBeGreaterThanOrEqual(unprintableRim);
    expect(y + height).toBeLessThanOrEqual(paper.height - unprintableRim);
    if (next) expect(next.y).toBeCloseTo(y + height, 10);
  });
});
