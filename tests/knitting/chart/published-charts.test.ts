import {readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import {chartOfRows} from '../../../src/knitting/chart/chart-of-rows.ts';
import {gridToRows} from '../../../src/knitting/chart/grid-to-rows.ts';
import {readChart} from '../../../src/knitting/chart/read-chart.ts';
import {writeChart} from '../../../src/knitting/chart/write-chart.ts';
import {worksSame} from './works-same.ts';

interface PublishedPattern {
  readonly id: string;
  readonly example_cast_on: number;
  readonly rows: readonly {
    readonly row: number | string;
    readonly text: string;
    readonly leftover: number;
    readonly sts_after: number;
  }[];
}

// data/stitch-patterns.json: published patterns, each naming its source, with the stitches of every row worked out by
// hand. Charted as printed; those of which a row is an excerpt or a remark do not prove and are left to the proof's tests.
// The shape is that of the file itself.
const {patterns} = JSON.parse(
  readFileSync(new URL('../../published/data/stitch-patterns.json', import.meta.url), 'utf8'),
) as {readonly patterns: readonly PublishedPattern[]};

const charted = patterns.flatMap((pattern) => {
  const lines = pattern.rows.map(({row, text}) => `${labelOf(row)}: ${text}`);
  const text = [`stitches: ${pattern.example_cast_on}`, ...lines].join('\n');
  const {grid, problems} = chartOfRows(text);
  return grid && problems.length === 0 ? [{id: pattern.id, pattern, text, grid}] : [];
});

describe('the published stitch patterns as charts', () => {
  it('are most of them', () => expect(charted.length).toBeGreaterThanOrEqual(patterns.length / 2));

  it.each(charted)('$id: each row shows the stitches worked out by hand', ({pattern, grid}) => {
    for (const {row, sts_after: after} of pattern.rows) {
      const drawn = grid.rows.find(({number}) => number === Number(row));
      if (drawn) expect(grid.passes * drawn.cells.reduce((sum, {makes}) => sum + makes, 0)).toBe(after);
    }
  });

  it.each(charted)('$id: rows → chart → rows works the same stitches', ({text, grid}) => {
    const {chart, problems} = readChart(writeChart(grid));
    expect(problems).toEqual([]);
    expect(chart?.kind).toBe('stitches');
    if (chart?.kind === 'stitches') worksSame(gridToRows(chart.grid), text, grid.passes);
  });
});

function labelOf(row: number | string): string {
  if (typeof row === 'string' && row.startsWith('every')) return 'Every row';
  return `Row${/^\d+$/.test(`${row}`) ? '' : 's'} ${row}`;
}
