import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {expect, test} from 'vitest';
import {smallBinder, swatchleaf} from '../support/run-cli.ts';

test('clippings are added at the end, shown by status, noted in the stub, and looked for by check', async () => {
  const folder = await smallBinder();
  const file = path.join(folder, 'content/clippings.md');
  const clip = (...words: readonly string[]) => swatchleaf(['clip', '--in', folder, ...words]);

  const first = await clip('S-01', '--source', 'nobody1999', '--page', '57', 'why the slip must be knitwise');
  expect(first.code).toBe(0);
  expect(first.out).toContain('The library has no source `nobody1999` yet');
  const begun = await readFile(file, 'utf8');
  expect(begun).toMatch(/\n- \d{4}-\d\d-\d\d S-01 \[@nobody1999, 57\] why the slip must be knitwise\n$/);

  const byHand = `${begun}\nMy own note, no entry, no line end`.replaceAll('\n', '\r\n');
  await writeFile(file, byHand);
  expect((await clip('s-01', 'ask the "guild"\nabout ends')).code).toBe(0);
  const kept = await readFile(file, 'utf8');
  expect(kept.startsWith(byHand)).toBe(true);
  expect(kept.slice(byHand.length)).toMatch(/^\r\n- \d{4}-\d\d-\d\d S-01 ask the "guild" about ends\r\n$/);

  const status = await swatchleaf(['status', 'S-01', folder]);
  expect(status.out).toContain('why the slip must be knitwise');
  expect(status.out).toContain('ask the "guild" about ends');
  const checked = await swatchleaf(['check', folder]);
  expect(checked.out + checked.err).toContain('clipped-source-not-cited');
});

test.each([
  [['S-99', 'words'], 'the syllabus has no `S-99`'],
  [['S-01'], 'there is nothing to keep'],
  [['only words'], 'which item'],
  [['S-01', '--page', '5', 'words'], 'a page needs its source'],
  [['S-01', '--source', 'a]b', 'words'], 'is not the key of a source'],
  [['S-01', '--source', 'a', '--page', 'p.', 'words'], '`p.` has no number after it'],
])('what cannot be kept is said, and nothing is written: %s', async (words, message) => {
  const folder = await smallBinder();
  const ran = await swatchleaf(['clip', '--in', folder, ...words]);
  expect(ran.code).toBe(2);
  expect(ran.err).toContain(message);
  await expect(readFile(path.join(folder, 'content/clippings.md'))).rejects.toThrow();
});
