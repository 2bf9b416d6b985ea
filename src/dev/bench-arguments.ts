import {Command, InvalidArgumentError, Option} from 'commander';
import {type BenchGroup, benchGroups} from './bench-record.ts';

export interface BenchWishes {
  readonly runs: number;
  readonly groups: readonly BenchGroup[];
  /** Path to write the run to; `-` for standard output; null when it is not asked for. */
  readonly json: string | null;
  readonly table: boolean;
  readonly keep: boolean;
  readonly stages: boolean;
  readonly peers: boolean;
  readonly peersFrom: string | null;
}

/** From this many on a median stands for itself; fewer are a quick look. */
export const enoughRuns = 7;

/** Reads what was typed after `npm run bench --`. Throws commander's errors, which have said what is wrong. */
export function readBenchArguments(typed: readonly string[]): BenchWishes {
  const command = new Command('bench')
    .description('Measures the program beside its floors.')
    .argument('[runs]', 'measurements to each median', asCount, enoughRuns)
    .addOption(new Option('--only <groups...>', 'measure these alone').choices(benchGroups))
    .option('--growth', 'measure binders of 25 to 1,600 items too: some twenty minutes more')
    .option('--json [file]', 'write the run as JSON, to standard output where no file is named')
    .option('--table', 'write the run as a Markdown table to standard output')
    .option('--keep', 'add the run to tests/bench/history.json')
    .option('--stages', 'only show where the time of check and build goes')
    .option('--peers', 'only measure other printers and converters')
    .option('--peers-from <folder>', 'folder with a node_modules of peers')
    .exitOverride();
  command.parse(['node', 'bench', ...typed]);
  const options = command.opts();
  const standard = benchGroups.filter((group) => group !== 'growth' || options.growth === true);
  return {
    runs: command.processedArgs[0],
    groups: benchGroups.filter((group) => (options.only ?? standard).includes(group)),
    json: options.json === true ? '-' : (options.json ?? null),
    table: options.table === true,
    keep: options.keep === true,
    stages: options.stages === true,
    peers: options.peers === true,
    peersFrom: options.peersFrom ?? null,
  };
}

function asCount(text: string): number {
  if (!/^[1-9]\d{0,3}$/.test(text)) throw new InvalidArgumentError('It is a number from 1 on.');
  return Number(text);
}
