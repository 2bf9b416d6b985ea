import {execFileSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import path from 'node:path';
import {expect, test} from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');
const tracked = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\0')
  .filter((file) => file !== '');
const sources = tracked
  .filter((file) => file.startsWith('src/') && file.endsWith('.ts'))
  .map((file) => ({file, text: readFileSync(path.join(root, file), 'utf8')}));

function filesWith(pattern: RegExp): string[] {
  return sources.filter(({text}) => pattern.test(text)).map(({file}) => file);
}

test('`.use(` stands only in the one place that assembles the processors', () => {
  expect(filesWith(/\.use\(/)).toEqual(['src/markdown/processor.ts']);
});

test('only the command line and developers’ tools print or set the exit code', () => {
  const printing = filesWith(/process\.(stdout|stderr|exit)\b[.(]|process\.exitCode|\bconsole\.\w+\(/).filter(
    (file) => !file.startsWith('src/dev/'),
  );
  expect(printing).toEqual(['src/cli.ts']);
});

test('only one file starts the browser, and one module knows gray-matter', () => {
  expect(filesWith(/import\('puppeteer(-core)?'\)/)).toEqual(['src/print/browser.ts']);
  expect(filesWith(/from 'gray-matter'/)).toEqual(['src/markdown/front-matter.ts']);
});

test('no source file draws lots', () => {
  // Temporary names and profile folders come from node:crypto and mkdtemp, which need no seed to be safe.
  expect(filesWith(/Math\.random/)).toEqual([]);
});

test('no file is over 300 lines, and half are under 100', () => {
  const lengths = sources
    .map(({file, text}) => ({file, lines: text.split('\n').length}))
    .sort((a, b) => a.lines - b.lines);
  expect(lengths.filter(({lines}) => lines > 300)).toEqual([]);
  expect(lengths[Math.floor(lengths.length / 2)]?.lines).toBeLessThan(100);
});

test('file names are kebab-case and say what is inside', () => {
  const names = sources.map(({file}) => path.basename(file));
  expect(names.filter((name) => !/^[a-z0-9]+(-[a-z0-9]+)*(\.d)?\.ts$/.test(name))).toEqual([]);
  expect(names.filter((name) => /^(utils?|helpers?|common|manager|misc)\.ts$/.test(name))).toEqual([]);
});

test('the top level holds only what the layout names', () => {
  const top = new Set(
    tracked.map((file) => file.split('/')[0] ?? '').filter((name) => !name.startsWith('.')),
  );
  expect([...top].sort()).toEqual(
    [
      'DEVELOPERS.md',
      'README.md',
      'biome.json',
      'build',
      'content',
      'layouts',
      'package-lock.json',
      'package.json',
      'src',
      'tests',
      'tsconfig.build.json',
      'tsconfig.json',
      'vitest.config.ts',
    ].sort(),
  );
});
