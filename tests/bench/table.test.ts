import {describe, expect, test} from 'vitest';
import {benchLine, benchTable, markdownTable} from '../../src/dev/bench-table.ts';
import {markdownParser} from '../../src/markdown/processor.ts';
import {inventedRow, inventedRun} from './invented-run.ts';

describe('the table of a run', () => {
  const table = benchTable(
    inventedRun([
      inventedRow(),
      inventedRow({id: 'check-cold', what: '`check`', measured: 1.3, target: 1.3}),
      inventedRow({id: 'start-up', what: 'start-up', measured: 1.301, target: 1.3}),
      inventedRow({id: 'preview', what: 'save', against: null, unit: 'ms', measured: 1234.4, target: 1500}),
      inventedRow({id: 'rows', what: 'rows', against: null, unit: 'ms', measured: 3.25, target: null}),
      inventedRow({id: 'growth', what: 'growth', measured: null, detail: 'failed: no disk'}),
    ]),
  );

  test('says the machine, the versions and the load, then what was measured, asked for and reached', () => {
    expect(table).toBe(
      `Measured on 2026-11-20 at abc1234: Loom 9, 2 cores, 8 GiB, Linux 6.1; node v20.1.0, HeadlessChrome/1.2, citeproc 2.4.63. Medians of 7 runs, each beside its floor; 0.2 to 1.1 processes wanted a core meanwhile.

| what                   | measured          | target     |              |
| ---------------------- | ----------------- | ---------- | ------------ |
| \`build\` of the example | 1.25 × bare print | ≤ 1.30 ×   | reached      |
| \`check\`                | 1.30 × bare print | ≤ 1.30 ×   | reached      |
| start-up               | 1.30 × bare print | ≤ 1.30 ×   | missed       |
| save                   | 1,234 ms          | ≤ 1,500 ms | reached      |
| rows                   | 3.3 ms            |            | reported     |
| growth                 | failed: no disk   | ≤ 1.30 ×   | not measured |
`,
    );
  });

  test('is one table of equal rows to a reader of Markdown', () => {
    const tree = markdownParser.parse(table);
    expect(tree.children.map(({type}) => type)).toEqual(['paragraph', 'table']);
    const [, parsed] = tree.children;
    const widths = parsed?.type === 'table' ? parsed.children.map(({children}) => children.length) : [];
    expect(widths).toEqual([4, 4, 4, 4, 4, 4, 4]);
  });

  test('keeps a bar within a cell', () => {
    const tree = markdownParser.parse(markdownTable(['a|b', 'c'], [['`x | y`', 'z']]));
    const [parsed] = tree.children;
    const widths = parsed?.type === 'table' ? parsed.children.map(({children}) => children.length) : [];
    expect(widths).toEqual([2, 2]);
  });
});

describe('the line of a row', () => {
  test('names the verdict first, and how far the measurements lie apart', () => {
    expect(benchLine(inventedRow())).toBe(
      'reached: `build` of the example: 1.25 × bare print (at most 1.30 ×), half of 7 between 1.20 × and 1.31 ×\n    2,500 ms against 2,000 ms',
    );
  });

  test('says why there is no figure', () => {
    const row = inventedRow({measured: null, quartiles: null, target: null, detail: 'failed: no disk'});
    expect(benchLine(row)).toBe('not measured: `build` of the example: failed: no disk');
  });
});
