import {spawnSync} from 'node:child_process';
import {pathToFileURL} from 'node:url';
import {expect, test} from 'vitest';
import {program} from '../support/run-cli.ts';

const tuner = new URL('../commands/tune-compiling.js', pathToFileURL(program)).href;

/** What V8 writes to standard error: it does so itself, past everything that could catch it. */
function complaint(version: string): string {
  const code = `import(${JSON.stringify(tuner)}).then(({tuneCompiling}) => tuneCompiling(${version}))`;
  return spawnSync(process.execPath, ['-e', code], {encoding: 'utf8'}).stderr;
}

test('V8 knows what it is told', () => {
  expect(complaint('process.versions.v8')).toBe('');
});

test('a version that was not tried is told nothing', () => {
  expect(complaint("'99.1.2'")).toBe('');
});
