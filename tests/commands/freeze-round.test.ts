import {createHash} from 'node:crypto';
import {expect, test} from 'vitest';
import {freezeRound} from '../../src/commands/freeze-round.ts';
import {createMemoryWorkspace, type MemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {Workspace} from '../../src/io/workspace.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

const swatch = 'content/swatches/s-01.md';
const question = 'content/questions/q-01.md';
const content = {[swatch]: 'a swatch', [question]: 'a question', 'content/library.yaml': ''};

function posting(...files: readonly string[]) {
  return {
    round: 0,
    sent: '2026-03-01',
    items: new Map(files.map((file) => [file === swatch ? 'S-01' : 'Q-01', file])),
    texts: [...files, 'content/library.yaml'],
    pdfs: new Map([['build/binder.pdf', `the pages of ${files.length}`]]),
  };
}

/** A workspace whose run is killed after some files were written. */
function killedAfter(workspace: MemoryWorkspace, writes: number): Workspace {
  let left = writes;
  const killed = async () => {
    throw new Error('killed');
  };
  return {
    ...workspace,
    write: (path, bytes) => (left-- > 0 ? workspace.write(path, bytes) : killed()),
    create: (path, bytes) => (left-- > 0 ? workspace.create(path, bytes) : killed()),
  };
}

function roundIn({files}: MemoryWorkspace): ReadonlyMap<string, string> {
  const kept = [...files].filter(([path]) => path.startsWith('content/rounds/'));
  return new Map(kept.sort().map(([path, bytes]) => [path.slice(17), Buffer.from(bytes).toString()]));
}

test('every file that is kept is in the list of checksums, `sent.yaml` aside, and the list is right', async () => {
  const workspace = createMemoryWorkspace(content);
  const written = await freezeRound(workspace, posting(swatch, question));
  const round = roundIn(workspace);
  expect(written.toSorted()).toEqual([...round.keys()].map((path) => `content/rounds/0/${path}`));
  const kept = ['library.yaml', 'pdf/binder.pdf', 'questions/q-01.md', 'swatches/s-01.md'];
  expect([...round.keys()]).toEqual([...kept, 'checksums.txt', 'sent.yaml'].sort());
  const lines = kept.map(
    (path) =>
      `${createHash('sha256')
        .update(String(round.get(path)))
        .digest('hex')}  ${path}`,
  );
  expect(round.get('checksums.txt')?.trim().split('\n').toSorted()).toEqual(lines.sort());
});

test('killed after any number of files, then sent with less in it: kept is exactly what is sent then', async () => {
  const expected = createMemoryWorkspace(content);
  await freezeRound(expected, posting(question));
  const all = (await freezeRound(createMemoryWorkspace(content), posting(swatch, question))).length;
  for (let writes = 0; writes < all; writes++) {
    const workspace = createMemoryWorkspace(content);
    await expect(freezeRound(killedAfter(workspace, writes), posting(swatch, question))).rejects.toThrow(
      'killed',
    );
    expect(roundIn(workspace).has('sent.yaml')).toBe(false);
    await freezeRound(workspace, posting(question));
    expect(roundIn(workspace), `killed after ${writes}`).toEqual(roundIn(expected));
    for (const [path, text] of Object.entries(content))
      expect(Buffer.from(workspace.files.get(path) ?? []).toString()).toBe(text);
  }
});

test('what the candidate laid into the folder or wrote over there stays', async () => {
  const workspace = createMemoryWorkspace({
    ...content,
    'content/rounds/0/notes.md': 'my notes',
    'content/rounds/0/swatches/s-01.md': 'written over',
    // The sums are those of an empty file.
    'content/rounds/0/checksums.txt': ['swatches/s-01.md', '../../library.yaml', '/x', '']
      .map((path) => `e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855  ${path}\n`)
      .join(''),
  });
  await freezeRound(workspace, posting(question));
  expect(roundIn(workspace).get('notes.md')).toBe('my notes');
  expect(roundIn(workspace).get('swatches/s-01.md')).toBe('written over');
  expect(workspace.files.has('content/library.yaml')).toBe(true);
});

test('a round that was sent is not touched', async () => {
  const workspace = createMemoryWorkspace(content);
  await freezeRound(workspace, posting(swatch, question));
  const before = roundIn(workspace);
  await expect(freezeRound(workspace, posting(question))).rejects.toThrow(OperationalError);
  expect(roundIn(workspace)).toEqual(before);
});
