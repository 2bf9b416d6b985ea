import fc from 'fast-check';
import {expect, test} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {colourShares, longFloats, neighbourContrasts} from '../../../src/knitting/chart/colour-facts.ts';
import {gridToRows} from '../../../src/knitting/chart/grid-to-rows.ts';
import {readChart} from '../../../src/knitting/chart/read-chart.ts';
import {writeChart} from '../../../src/knitting/chart/write-chart.ts';
import {chartLikeText, soundRows} from './arbitraries.ts';
import {worksSame} from './works-same.ts';

test('every row fills the width of the chart, and its stitches are the count of the row', () => {
  fc.assert(
    fc.property(soundRows, ({text, counts}) => {
      const {grid, problems} = chartOfRows(text);
      expect(problems).toEqual([]);
      const widest = Math.max(...counts);
      expect(grid?.rows.map(({cells}) => cells.reduce((sum, {squares}) => sum + squares, 0))).toEqual(
        counts.map(() => widest),
      );
      expect(grid?.rows.map(({cells}) => cells.reduce((sum, {makes}) => sum + makes, 0))).toEqual(counts);
    }),
  );
});

test('rows → chart → text of the chart → chart → rows works the same stitches in the same order', () => {
  fc.assert(
    fc.property(soundRows, ({text}) => {
      const grid = chartOfRows(text).grid;
      const read = readChart(grid ? writeChart(grid) : '');
      expect(read.problems).toEqual([]);
      const again = read.chart?.kind === 'stitches' ? gridToRows(read.chart.grid) : '';
      worksSame(again, text);
    }),
  );
});

test('chart → rows → chart is the identity', () => {
  fc.assert(
    fc.property(soundRows, ({text}) => {
      const {grid} = chartOfRows(text);
      const again = grid && chartOfRows(gridToRows(grid)).grid;
      expect(again && writeChart(again)).toBe(grid && writeChart(grid));
    }),
  );
});

test('text of a chart → chart → text of a chart is the identity', () => {
  fc.assert(
    fc.property(soundRows, ({text}) => {
      const {grid} = chartOfRows(text);
      const written = grid ? writeChart(grid) : '';
      const {chart} = readChart(written);
      expect(chart?.kind === 'stitches' && writeChart(chart.grid)).toBe(written);
    }),
  );
});

const colourText = fc
  .record({
    width: fc.integer({min: 1, max: 20}),
    cells: fc.array(fc.constantFrom('A', 'B', 'C', '_'), {minLength: 20, maxLength: 200}),
  })
  .map(({width, cells}) => {
    const rows: string[] = [];
    for (let at = 0; at + width <= cells.length; at += width)
      rows.push(cells.slice(at, at + width).join(' '));
    return `A = colour chalk #fff\nB = colour deep water #27506b\nC = colour bramble\n${rows.join('\n')}`;
  });

test('the stitches of all colours together are the squares of the chart, and the shares are one whole', () => {
  fc.assert(
    fc.property(colourText, (text) => {
      const {chart} = readChart(text);
      if (chart?.kind !== 'colours') throw new Error('the chart was not read');
      const shares = colourShares(chart.grid);
      const squares = text.split('\n').slice(3).join('').replaceAll(/[ _]/g, '').length;
      expect(shares.reduce((sum, {stitches}) => sum + stitches, 0)).toBe(squares);
      if (squares > 0) expect(shares.reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 10);
    }),
  );
});

test('a float passes only stitches of other colours, and lengthening the limit never adds one', () => {
  fc.assert(
    fc.property(colourText, fc.nat({max: 6}), (text, most) => {
      const {chart} = readChart(text);
      if (chart?.kind !== 'colours') throw new Error('the chart was not read');
      const floats = longFloats(chart.grid, most);
      for (const {row, colour, firstStitch, stitches} of floats) {
        const cells = chart.grid.rows.find(({number}) => number === row);
        const seen = (cells?.cells ?? []).filter((cell) => cell !== null);
        const worked = cells?.side === 'RS' ? seen.reverse() : seen;
        const passed = worked.slice(firstStitch - 1, firstStitch - 1 + stitches);
        expect(passed).toHaveLength(stitches);
        expect(passed).not.toContain(colour);
        expect(stitches).toBeGreaterThan(most);
      }
      expect(longFloats(chart.grid, most + 1).length).toBeLessThanOrEqual(floats.length);
    }),
  );
});

test('whatever stands in a chart block, it is read or refused at places within the text', () => {
  fc.assert(
    fc.property(chartLikeText, (text) => {
      const {chart, problems} = readChart(text);
      expect(chart === null).toBe(problems.length > 0);
      for (const {span} of problems) {
        expect(span.start).toBeLessThanOrEqual(span.end);
        expect(span.end).toBeLessThanOrEqual(text.length);
      }
      if (chart?.kind === 'stitches') gridToRows(chart.grid);
      if (chart?.kind === 'colours') neighbourContrasts(chart.grid);
      chartOfRows(text);
    }),
    {numRuns: 500},
  );
});
