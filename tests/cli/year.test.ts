import {execFileSync} from 'node:child_process';
import {createHash} from 'node:crypto';
import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {expect, test} from 'vitest';
import {readPdfFacts} from '../../src/print/pdf-facts.ts';
import {filesIn, root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const swatch = 'content/swatches/s-01.md';
const text = await readFile(path.join(root, 'tests/rules/base', swatch), 'utf8');

test('a year: printed, changed, sent, answered, reworked, sent again, passed', async () => {
  const folder = await smallBinder();
  const run = (...args: readonly string[]) => swatchleaf(args, {cwd: folder});
  const write = (file: string, content: string) => writeFile(path.join(folder, file), content);
  const read = (file: string) => readFile(path.join(folder, file), 'utf8');
  const labels = async (file: string) =>
    readPdfFacts(await readFile(path.join(folder, file))).pages.map(({label}) => label ?? '');
  const states = async () => {
    const {out} = await run('status', '--json');
    return new Map(
      Array.from(out.matchAll(/"id": "([A-Z]-\d+)",[^{}]*?"state": "([^"]+)"/g), ([, id, state]) => [
        id,
        state,
      ]),
    );
  };

  // Everything is printed once; one line changes; only that item's leaves are printed again.
  expect((await run('build')).code).toBe(0);
  expect((await run('printed')).code).toBe(0);
  expect((await states()).get('S-01')).toBe('printed');
  await write(swatch, text.replace('lies flat', 'lies quite flat'));
  expect((await run('build', '--changed')).code).toBe(0);
  const changed = await labels('build/changed.pdf');
  expect(changed.length).toBeGreaterThan(0);
  expect(changed.every((label) => label.startsWith('S-01'))).toBe(true);
  expect((await run('printed')).code).toBe(0);

  // The first posting is kept as it was sent.
  expect((await run('send')).code).toBe(2);
  const sent = await run('send', '--self-checked');
  expect({code: sent.code, err: sent.err.includes('error')}).toEqual({code: 0, err: false});
  const round0 = path.join(folder, 'content/rounds/0');
  execFileSync('sha256sum', ['--check', '--quiet', 'checksums.txt'], {cwd: round0});
  const frozen = await digestOf(folder, 'content/rounds/0/');
  expect(await states()).toEqual(new Map(['S-01', 'Q-01', 'B-01'].map((id) => [id, 'sent'])));
  expect((await run('send', '--self-checked')).code).toBe(2);

  // The answer asks for one item again; without a written answer to its remark nothing is sent.
  expect((await run('answer')).code).toBe(0);
  expect((await run('answer')).code).toBe(2);
  const answer0 = 'content/assessments/round-0.yaml';
  await write(
    answer0,
    (await read(answer0))
      .replace(/received: .*/, 'received: 2026-10-01')
      .replace('S-01: {result: open}', 'S-01: {result: rework, remark: The edge is loose.}')
      .replaceAll('open}', 'passed}'),
  );
  expect((await states()).get('S-01')).toBe('rework');
  expect((await run('check')).out).toContain('rework-without-answer');
  expect((await run('send', '--self-checked')).code).toBe(1);
  await write(
    swatch,
    text
      .replace(
        'status: finished',
        'status: finished\nrework:\n  - {round: 1, done: The edge was worked anew.}',
      )
      .replace('on: 2025-09-22', 'on: 2026-10-03')
      .replace('lies flat', 'lies perfectly flat'),
  );
  const reprint = await run('reprint');
  expect(reprint.code).toBe(0);
  expect(reprint.out.trim().split('\n')).toEqual([
    'build/reprint/S-01.pdf',
    'build/reprint/round-1-letter.pdf',
    'build/reprint/round-1-packing-list.pdf',
    'build/reprint/round-1-label.pdf',
  ]);
  expect((await labels('build/reprint/S-01.pdf'))[0]).toBe('S-01 cover · 1 of 1');
  expect((await run('send', '--self-checked')).code).toBe(0);
  expect((await states()).get('S-01')).toBe('sent');

  // The second answer lets it pass; what was posted first is still what it was.
  expect((await run('answer')).code).toBe(0);
  const answer1 = 'content/assessments/round-1.yaml';
  await write(
    answer1,
    (await read(answer1)).replace(/received: .*/, 'received: 2026-11-01').replace('open}', 'passed}'),
  );
  expect(await states()).toEqual(new Map(['S-01', 'Q-01', 'B-01'].map((id) => [id, 'passed'])));
  expect(await digestOf(folder, 'content/rounds/0/')).toBe(frozen);
}, 400_000);

async function digestOf(folder: string, below: string): Promise<string> {
  const files = (await filesIn(folder)).filter((file) => file.startsWith(below));
  const digest = createHash('sha256');
  for (const file of files) digest.update(file).update(await readFile(path.join(folder, file)));
  return digest.digest('hex');
}
