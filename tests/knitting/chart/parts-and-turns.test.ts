import {describe, expect, test} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {colourAreas} from '../../../src/knitting/chart/colour-areas.ts';
import {gridToRows} from '../../../src/knitting/chart/grid-to-rows.ts';
import {readChart} from '../../../src/knitting/chart/read-chart.ts';

describe('a chart of equal parts', () => {
  test('a crown is drawn as one wedge', () => {
    const {grid} = chartOfRows(
      'in the round\nstitches: 96\nRnd 1: *K10, k2tog; rep from * to end.\nRnd 2: Knit.\nRnd 3: *K9, k2tog; rep from * to end.',
    );
    expect([grid?.passes, grid?.width, grid?.start]).toEqual([8, 11, 12]);
  });

  test('a narrow one is drawn whole', () => {
    const {grid} = chartOfRows('in the round\nstitches: 24\nRnd 1: *K10, k2tog; rep from * to end.');
    expect([grid?.passes, grid?.width]).toEqual([1, 22]);
  });

  test('a flat one whose edges differ is drawn whole', () => {
    const {grid} = chartOfRows('cast on: 50\nRow 1 (RS): K1, *k2, p2; rep from * to last st, p1.');
    expect(grid?.passes).toBe(1);
  });

  test('rows that are all called rounds are rounds', () => {
    expect(chartOfRows('stitches: 8\nRnd 1: Knit.\nRnd 2: *K1, p1; rep from * to end.').grid?.isRound).toBe(
      true,
    );
  });

  test.each([
    ['the repeat as often as the stitches allow', 96, '1 | / . . . . . . _ |', [8, 12]],
    ['stitches beside the repeat are worked once', 98, '1 . | / . . . . . . _ | .', [10, 1]],
  ])('%s', (_, stitches, line, expected) => {
    const {chart, problems} = readChart(`in the round\nstitches: ${stitches}\n. = k\n/ = k2tog\n${line}\n`);
    expect(problems).toEqual([]);
    expect(chart?.kind === 'stitches' && [chart.grid.start, chart.grid.passes]).toEqual(expected);
  });

  test('a repeat that does not come out on the stitches is told', () => {
    const {problems} = readChart('in the round\nstitches: 97\n. = k\n1 | . . . . . . . . |\n');
    expect(problems).toHaveLength(1);
  });
});

describe('turns', () => {
  test('what is left on the needle, and how the work is turned, comes back as it was written', () => {
    const rows =
      'stitches: 8\nRow 1 (RS): k5, w&t.\nRow 2 (WS): p3, turn.\nRow 3 (RS): k6.\nRow 4 (WS): p8.\n';
    const {grid, problems} = chartOfRows(rows);
    expect(problems).toEqual([]);
    expect(grid?.rows.map(({turn}) => turn)).toEqual(['wrapped', 'plain', null, null]);
    expect(grid && gridToRows(grid)).toBe(rows);
  });
});

describe('areas of colour', () => {
  test('a diamond on its ground: two lengths of ground, one of the diamond, as many stitches as squares', () => {
    const {chart} = readChart(
      'method: intarsia\n. = colour grey #888888\nX = colour red #aa2222\n3 . . X . .\n2 . X X X .\n1 . . X . .\n',
    );
    const areas = chart?.kind === 'colours' ? colourAreas(chart.grid) : [];
    expect(areas).toEqual([
      {colour: 0, firstRow: 1, lastRow: 3, stitches: 5},
      {colour: 1, firstRow: 1, lastRow: 3, stitches: 5},
      {colour: 0, firstRow: 1, lastRow: 3, stitches: 5},
    ]);
  });
});
