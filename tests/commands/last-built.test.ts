import {expect, test} from 'vitest';
import {binderPdf, removeOldParts, removeOldReprints} from '../../src/commands/last-built.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';

const old = [
  'build/binder.pdf',
  'build/changed-slip.pdf',
  'build/changed.pdf',
  'build/inserts.pdf',
  'build/letter.pdf',
  'build/my-notes.pdf',
  'build/only-tags.pdf',
  'build/only.pdf',
  'build/reprint/S-01.pdf',
  'build/reprint/S-02.pdf',
  'build/reprint/notes for S-02.pdf',
  'build/reprint/round-1-label.pdf',
  'build/reprint/round-1-letter.pdf',
  'build/reprint/round-1-packing-list.pdf',
  'build/self-check.pdf',
  'build/tags.pdf',
  'content/inserts.pdf',
];

/** What is left of `old` after `made` was made, and what was said. */
async function left(remove: typeof removeOldParts, made: readonly string[]) {
  const workspace = createMemoryWorkspace(Object.fromEntries(old.map((path) => [path, 'old'])));
  const said: string[] = [];
  await remove(workspace, made, (line) => said.push(line));
  const paths = new Set(await workspace.list(''));
  return {gone: old.filter((path) => !paths.has(path)), said};
}

test('after the whole binder, what it no longer asks for goes with the parts of earlier builds, and is named', async () => {
  const {gone, said} = await left(removeOldParts, [binderPdf, 'build/tags.pdf', 'build/self-check.pdf']);
  expect(gone).toEqual([
    'build/changed-slip.pdf',
    'build/changed.pdf',
    'build/inserts.pdf',
    'build/letter.pdf',
    'build/only-tags.pdf',
    'build/only.pdf',
  ]);
  expect(said.toSorted()).toEqual(gone.map((path) => `Removed ${path}, which an earlier build had made`));
});

test('after some sheets alone, the documents of the whole binder stay', async () => {
  const {gone} = await left(removeOldParts, ['build/only.pdf']);
  expect(gone).toEqual(['build/changed-slip.pdf', 'build/changed.pdf', 'build/only-tags.pdf']);
});

test('after a round was reprinted, the files of earlier ones go, and what is not ours stays', async () => {
  const {gone} = await left(removeOldReprints, [
    'build/reprint/S-01.pdf',
    'build/reprint/round-2-letter.pdf',
  ]);
  expect(gone).toEqual([
    'build/reprint/S-02.pdf',
    'build/reprint/round-1-label.pdf',
    'build/reprint/round-1-letter.pdf',
    'build/reprint/round-1-packing-list.pdf',
  ]);
});
