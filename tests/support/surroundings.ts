import type {Surroundings} from '../../src/commands/command.ts';

/** The world of a command in a test: no terminal, 1 March 2026. `said` collects its progress. */
export function testSurroundings(
  changes: Partial<Surroundings> = {},
): Surroundings & {readonly said: readonly string[]} {
  const said: string[] = [];
  return {
    currentFolder: '.',
    environment: {},
    today: '2026-03-01',
    progress: (line) => said.push(line),
    version: '0.0.0',
    columns: 80,
    ask: null,
    ...changes,
    said,
  };
}
