import type {BenchRow, BenchRun} from '../../src/dev/bench-record.ts';

export function inventedRow(changes: Partial<BenchRow> = {}): BenchRow {
  return {
    id: 'build',
    what: '`build` of the example',
    against: 'bare print',
    unit: '×',
    measured: 1.25,
    quartiles: [1.2, 1.31],
    target: 1.3,
    runs: 7,
    detail: '2,500 ms against 2,000 ms',
    ...changes,
  };
}

export function inventedRun(rows: readonly BenchRow[]): BenchRun {
  return {
    date: '2026-11-20T19:30:00.000Z',
    commit: 'abc1234',
    machine: {processor: 'Loom 9', cores: 2, memory: '8 GiB', system: 'Linux 6.1'},
    versions: {swatchleaf: '0.1.0', node: 'v20.1.0', browser: 'HeadlessChrome/1.2', citeproc: '2.4.63'},
    runs: 7,
    load: {before: 0.21, after: 1.08},
    rows: [...rows],
  };
}
