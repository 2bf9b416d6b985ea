import process from 'node:process';
import {expect, test} from 'vitest';
import {generator, seedOf} from './generator.ts';
import {mutated} from './mutate.ts';
import {type Parser, parsers} from './parsers.ts';
import {shrunk} from './shrunk.ts';

/*
 * Every parser reads real texts that were broken in chance ways. For each input it must return, and what it returns keeps
 * the parser's law: nothing thrown, every place inside the text, the text at a place the one that is shown. `npm run test:long`
 * reads a million of them; SWATCHLEAF_SEED=7 breaks the texts in other ways, SWATCHLEAF_PARSER='rows|charts' asks for some of the parsers.
 */
const isLong = Boolean(process.env.SWATCHLEAF_LONG);
const seed = Number(process.env.SWATCHLEAF_SEED ?? 20_260_928);
const wanted = new RegExp(process.env.SWATCHLEAF_PARSER ?? '');
const usual = 300;
/** For parsers that take ten times as long as the others. */
const usualOfSlow = 100;

const chosen = parsers.filter(({name}) => wanted.test(name));

test('the long run reads at least a million texts', () => {
  expect(parsers.reduce((sum, {long}) => sum + long, 0)).toBeGreaterThanOrEqual(1_000_000);
});

test.each(chosen)('$name', {timeout: 3_600_000}, async (parser) => {
  const count = isLong ? parser.long : parser.long > 12_000 ? usual : usualOfSlow;
  const slowest = {index: 0, milliseconds: 0, length: 0};
  const start = process.cpuUsage();
  for (let index = 0; index < count; index++) {
    const text = inputOf(parser, index);
    const before = performance.now();
    const trouble = await troubleWith(parser, text);
    const milliseconds = performance.now() - before;
    if (milliseconds > slowest.milliseconds)
      Object.assign(slowest, {index, milliseconds, length: text.length});
    if (trouble === null) continue;
    const small = await shrunk(text, async (less) => (await troubleWith(parser, less)) !== null);
    expect.fail(
      `${parser.name}, SWATCHLEAF_SEED=${seed}, input ${index}: ${trouble}\nin ${JSON.stringify(small)}\nwhere ${await troubleWith(parser, small)}`,
    );
  }
  if (isLong) {
    const {user, system} = process.cpuUsage(start);
    const most = `${slowest.milliseconds.toFixed(0)} ms for ${slowest.length} characters, input ${slowest.index}`;
    console.log(
      `${parser.name}: ${count} texts, seed ${seed}, ${((user + system) / 1e6).toFixed(1)} s of work, the slowest ${most}`,
    );
  }
});

function inputOf(parser: Parser, index: number): string {
  return mutated(parser, generator(seedOf(seed, parser.name, index)));
}

/** Why the parser or its law failed; null when all is well. */
async function troubleWith(parser: Parser, text: string): Promise<string | null> {
  try {
    await parser.read(text);
    return null;
  } catch (error) {
    return error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
}
