import {spawn} from 'node:child_process';
import {mkdir, readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {pathToFileURL} from 'node:url';
import {describe, expect, test} from 'vitest';
import {commandList} from '../../src/commands/command-list.ts';
import {emptyFolder, filesIn, root, smallBinder, swatchleaf} from '../support/run-cli.ts';
import {startSwatchleaf} from '../support/start-cli.ts';

/** Two runs at once on a computer that may be slow. */
const patience = {timeout: 180_000};

async function locksIn(folder: string): Promise<readonly string[]> {
  return (await filesIn(folder)).filter((file) => file.endsWith('.lock'));
}

test('the commands that write into the binder take the lock; those that only look do not', () => {
  const takes = commandList.filter(({writesInto}) => writesInto !== undefined).map(({name}) => name);
  const looks = ['check', 'status', 'watch', 'explain', 'doctor', 'schema', 'completion'];
  expect(takes).toEqual(commandList.map(({name}) => name).filter((name) => !looks.includes(name)));
  expect(takes).toEqual(
    expect.arrayContaining([
      'init',
      'new',
      'import',
      'clip',
      'build',
      'printed',
      'send',
      'answer',
      'reprint',
    ]),
  );
});

test.each([
  ['build', ['build'], ['here']],
  ['build', [], []],
  ['build', ['elsewhere'], ['elsewhere']],
  ['new', ['S-01', 'elsewhere'], ['elsewhere']],
  ['printed', ['Contents', 'elsewhere', 'S-01'], ['elsewhere']],
  ['reprint', ['S-01'], []],
  ['import', ['shelf.bib', 'elsewhere'], ['elsewhere']],
])('%s %j: the folder that is locked is the one that was typed', (name, words, [folder = '.']) => {
  const command = commandList.find((each) => each.name === name);
  const typed = folder === 'here' ? {words: [], options: {only: ['S-01', 'here']}} : {words, options: {}};
  expect(command?.writesInto?.(typed)).toBe(folder);
});

describe('two runs at once', () => {
  test('the second waits, says for what, and does its work when the first has ended', patience, async () => {
    const folder = await smallBinder();
    await swatchleaf(['build', folder]);
    const build = startSwatchleaf(['build', folder]);
    // All is printed then, and nothing is written yet.
    await build.until(/Check: /);
    build.signal('SIGSTOP');
    const [lock = ''] = await locksIn(folder);
    expect(lock).toMatch(new RegExp(`^build/\\.swatchleaf-build-${build.processId}-\\d+\\.lock$`));
    expect(await readFile(path.join(folder, lock), 'utf8')).toBe('');
    const printed = startSwatchleaf(['printed', folder]);
    await printed.until(/Waiting/);
    build.signal('SIGCONT');
    expect(printed.said()).toMatch(
      new RegExp(
        `^Waiting: \`build\` has been at work in this binder since \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d \\(process ${build.processId}\\) …\\n$`,
      ),
    );
    expect((await build.ended).code).toBe(0);
    expect((await printed.ended).code).toBe(0);
    expect(await locksIn(folder)).toEqual([]);
  });

  test(
    'when the first takes long: exit 3, who it is and what to do; looking is allowed, and nothing is touched',
    patience,
    async () => {
      const folder = await smallBinder();
      const build = startSwatchleaf(['build', folder]);
      await build.until(/Binder: /);
      build.signal('SIGSTOP');
      const before = await filesIn(folder);
      const commands = [['new'], ['printed'], ['send', '--self-checked'], ['build']];
      const refused = await Promise.all(commands.map((args) => swatchleaf([...args, folder])));
      for (const [index, {code, out, err}] of refused.entries()) {
        expect({code, out}).toEqual({code: 3, out: ''});
        expect(err).toMatch(
          new RegExp(
            `\\nswatchleaf: \`build\` has been at work in this binder since .{16} \\(process ${build.processId}, still running\\); wait until it has ended or end it in its window, then run \`${commands[index]?.[0]}\` again\\n$`,
          ),
        );
      }
      expect((await swatchleaf(['check', folder])).code).toBe(0);
      expect((await swatchleaf(['status', folder])).code).toBe(0);
      expect(await filesIn(folder)).toEqual(before);

      // Killed, it holds nothing any more, and the next run says nothing of it.
      build.signal('SIGKILL');
      await build.ended;
      expect(await locksIn(folder)).toHaveLength(1);
      const doctor = await swatchleaf(['doctor', folder], {env: {SOURCE_DATE_EPOCH: ''}});
      expect(doctor.out.replace(/\s+/g, ' ')).toContain('left behind by a run that was killed: build');
      const next = await swatchleaf(['new', folder]);
      expect(next).toEqual({
        code: 0,
        out: '',
        err: 'No file was to be made: every requirement has its item.\n',
      });
      expect(await locksIn(folder)).toEqual([]);
    },
  );

  test('two that begin a binder in one folder: one does, the other is told', patience, async () => {
    const folder = await emptyFolder();
    const args = ['init', path.join(folder, 'binder'), '--name', 'Ann Weaver'];
    const ran = await Promise.all([swatchleaf(args), swatchleaf(args)]);
    expect(ran.map(({code}) => code).toSorted()).toEqual([0, 2]);
    expect(ran.find(({code}) => code === 2)?.err).toMatch(/is a binder already/);
  });
});

test('a run that fails gives the lock back', async () => {
  const folder = await smallBinder({'content/syllabus.yaml': 'title: [\n'});
  for (const args of [['build'], ['build', '--browser', 'none'], ['answer'], ['printed']])
    expect((await swatchleaf([...args, folder])).code).not.toBe(0);
  expect((await filesIn(folder)).filter((file) => !file.startsWith('content/'))).toEqual([]);
});

test(
  'of many runs that count in one file, none counts over another, though some are killed',
  patience,
  async () => {
    const folder = await emptyFolder();
    await mkdir(path.join(folder, 'content'));
    const counter = path.join(folder, 'count');
    await writeFile(counter, '0');
    // What is read, waited over and written back is lost when two do it at once.
    const script = `
    const {lockFolder} = await import(${JSON.stringify(pathToFileURL(path.join(root, '.compiled/io/folder-lock.js')))});
    const {readFileSync, writeFileSync} = await import('node:fs');
    const [folder, counter, turns] = process.argv.slice(1);
    for (let turn = 0; turn < Number(turns); turn++) {
      const lock = await lockFolder(folder, {command: 'count', onWait: () => {}, patience: 150000});
      if (turn === 2 && turns === '3') process.kill(process.pid, 'SIGKILL');
      const count = Number(readFileSync(counter, 'utf8'));
      await new Promise((resolve) => setTimeout(resolve, 3));
      writeFileSync(counter, String(count + 1));
      lock.release();
    }`;
    const count = (turns: number) =>
      new Promise<void>((resolve) => {
        const args = ['--input-type=module', '-e', script, folder, counter, String(turns)];
        spawn(process.execPath, args).on('close', () => resolve());
      });
    // Those with three turns die in the third, holding the lock.
    await Promise.all([12, 12, 12, 3, 3, 3].map(count));
    // One of them may have been the last of all; its claim is for the next run to take away.
    await count(1);
    expect(await readFile(counter, 'utf8')).toBe(String(3 * 12 + 3 * 2 + 1));
    expect(await locksIn(folder)).toEqual([]);
  },
);
