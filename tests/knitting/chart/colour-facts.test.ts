import {describe, expect, test} from 'vitest';
import {bobbinCounts, crowdedRows, longFloats} from '../../../src/knitting/chart/colour-facts.ts';
import type {ColourGrid} from '../../../src/knitting/chart/colour-grid.ts';
import {contrastRatio, relativeLuminance} from '../../../src/knitting/chart/contrast.ts';
import {readChart} from '../../../src/knitting/chart/read-chart.ts';

describe('contrast as WCAG 2.2 defines it', () => {
  // The end points follow from the definition itself; the greys are the boundary cases that W3C's understanding
  // documents and failure examples name: #767676 just passes 4.5 on white, #777777 just fails it, #949494 just passes 3.
  test.each([
    ['#000000', '#ffffff', 21],
    ['#ffffff', '#ffffff', 1],
    ['#767676', '#ffffff', 4.54],
    ['#777777', '#ffffff', 4.48],
    ['#949494', '#ffffff', 3.03],
  ])('%s and %s: %f', (a, b, ratio) => {
    expect(contrastRatio(a, b)).toBeCloseTo(ratio, 2);
    expect(contrastRatio(b, a)).toBe(contrastRatio(a, b));
  });

  // The coefficients of the three primaries, ITU-R BT.709.
  test.each([
    ['#ff0000', 0.2126],
    ['#00ff00', 0.7152],
    ['#0000ff', 0.0722],
  ])('luminance of %s: %f', (hex, luminance) => {
    expect(relativeLuminance(hex)).toBeCloseTo(luminance, 10);
  });
});

const key = 'A = colour chalk\nB = colour deep water\nC = colour bramble\n';

/** Counted by hand on squared paper, from where the row begins: right on odd rows, left on even ones. */
describe('floats', () => {
  test.each([
    ['between two stitches', 'A B B B A A', [{row: 1, colour: 0, firstStitch: 3, stitches: 3}]],
    ['not before the first or behind the last', 'A A B A A A', []],
    ['from one repeat to the next', '| A A B A A |', [{row: 1, colour: 1, firstStitch: 4, stitches: 4}]],
    [
      'over the edge stitch into the repeat',
      '| B A A A | B',
      [{row: 1, colour: 1, firstStitch: 2, stitches: 3}],
    ],
  ])('%s', (_, line, floats) => {
    expect(longFloats(colours(key + line), 2)).toEqual(floats);
  });

  test('round and round, the last stitch leads to the first', () => {
    const floats = longFloats(colours(`in the round\n${key}A A B A A`), 2);
    expect(floats).toEqual([{row: 1, colour: 1, firstStitch: 4, stitches: 4}]);
  });

  test('a wrong-side row counts from the left', () => {
    const floats = longFloats(colours(`${key}A B B B A A\nA A A A A A`), 2);
    expect(floats).toEqual([{row: 2, colour: 0, firstStitch: 2, stitches: 3}]);
  });
});

test('rows of more than two colours', () => {
  expect(crowdedRows(colours(`${key}A B C\nA B A`))).toEqual([{row: 2, colours: 3}]);
});

test('every block of a colour hangs on a bobbin of its own', () => {
  expect(bobbinCounts(colours(`${key}A B C B A\nA A B A A`))).toEqual([
    {row: 1, bobbins: 3},
    {row: 2, bobbins: 5},
  ]);
});

function colours(text: string): ColourGrid {
  const {chart, problems} = readChart(text);
  if (chart?.kind !== 'colours') throw new Error(JSON.stringify(problems));
  return chart.grid;
}
