import {readFile} from 'node:fs/promises';
import {atomicWrite} from '../io/atomic-write.ts';
import {type BenchRun, benchHistory, withRun} from './bench-record.ts';

/** Adds a run to the history in `file`. Throws when what is there is no history: nothing of it is lost. */
export async function keepRun(file: string, run: BenchRun): Promise<void> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '[]';
    throw error;
  });
  const history = benchHistory.parse(JSON.parse(text));
  await atomicWrite(file, `${JSON.stringify(benchHistory.parse(withRun(history, run)), null, 2)}\n`);
}
