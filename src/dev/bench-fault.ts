import type {BenchRow} from './bench-record.ts';

/** The rows that `work` gives; where it fails, one that says why, so that the others are not lost. */
export async function rowsOrFault(
  words: Pick<BenchRow, 'id' | 'what' | 'target'>,
  work: () => Promise<readonly BenchRow[]>,
): Promise<readonly BenchRow[]> {
  try {
    return await work();
  } catch (error) {
    const fault = error instanceof Error ? error.message : String(error);
    return [
      {
        ...words,
        against: null,
        unit: 'ms',
        measured: null,
        quartiles: null,
        runs: 0,
        detail: `failed: ${fault.split('\n')[0]}`,
      },
    ];
  }
}
