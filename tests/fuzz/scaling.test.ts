import process from 'node:process';
import {describe, expect, test} from 'vitest';
import {readRows} from '../../src/knitting/rows/read-rows.ts';
import {type Growing, growths} from './growing.ts';

/*
 * Twice the text takes less than three times the work. Work is the processor's time of this process, so that others on the
 * machine do not count; the text grows until it takes long enough to be told from chance. Times are measured in the long run only.
 */
const enough = 150;
/** What is this quick even for the longest text that is read cannot be told from chance. */
const tooQuick = 5;
const pairs = 5;

describe.runIf(process.env.SWATCHLEAF_LONG)('time(2n) / time(n) is less than 3', () => {
  test.each(growths.map((growth) => [growth.name, growth] as const))('%s', async (name, growth) => {
    const {parts, ratio, milliseconds} = await growthOf(growth);
    const said = `${name}: ${parts} parts ${milliseconds.toFixed(1)} ms, twice as many ${ratio.toFixed(2)} times that`;
    console.log(said);
    if (milliseconds >= tooQuick) expect(ratio, said).toBeLessThan(3);
  });
});

describe('tokens looked at by the reader of rows', () => {
  const ofRows = growths.filter(({name}) => name.startsWith('rows, '));
  test.each(ofRows.map((growth) => [growth.name, growth] as const))('%s', (_, {text, most}) => {
    const parts = Math.min(most / 2, 400);
    const visited = (count: number) => readRows(`cast on: 10\nRow 1: ${text(count)}`).visited;
    expect(visited(2 * parts)).toBeLessThan(3 * visited(parts));
  });
});

async function growthOf({text, most, run}: Growing) {
  const timed = async (written: string) => {
    const start = process.cpuUsage();
    await run(written);
    const {user, system} = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  let parts = 8;
  for (;;) {
    await timed(text(parts));
    if ((await timed(text(parts))) >= enough || parts * 4 > most) break;
    parts *= 2;
  }
  const [once, twice] = [text(parts), text(2 * parts)];
  const times: {readonly once: number; readonly twice: number}[] = [];
  for (let pair = 0; pair <= pairs; pair++) times.push({once: await timed(once), twice: await timed(twice)});
  // The first pair warms up.
  const middle = (which: 'once' | 'twice') => median(times.slice(1).map((each) => each[which]));
  return {parts, milliseconds: middle('once'), ratio: middle('twice') / Math.max(middle('once'), 0.001)};
}

function median(numbers: readonly number[]): number {
  return [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;
}
