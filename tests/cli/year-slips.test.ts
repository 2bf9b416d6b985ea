import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import type {Outcome} from '../../src/commands/command.ts';
import {commandList} from '../../src/commands/command-list.ts';
import {runCommand} from '../../src/commands/run-command.ts';
import {UsageError} from '../../src/support/usage-error.ts';
import {filesIn, root, smallBinder} from '../support/run-cli.ts';
import {testSurroundings} from '../support/surroundings.ts';

/** A binder whose three items were printed and posted on 1 October 2026. */
const base = path.join(root, 'tests/rules/base/content');
const swatch = 'content/swatches/s-01.md';
const [swatchText, syllabus, settings] = await Promise.all(
  ['swatches/s-01.md', 'syllabus.yaml', 'binder.yaml'].map((file) => readFile(path.join(base, file), 'utf8')),
);
const sentRound = 'content/rounds/0/sent.yaml';
const ledger = 'content/print-ledger.yaml';
const sent: Readonly<Record<string, string>> = {
  [sentRound]: [
    'round: 0',
    'sent: 2026-10-01',
    'items:',
    '  S-01: swatches/s-01.md',
    '  Q-01: questions/q-01.md',
    '  B-01: reviews/b-01.md',
    '',
  ].join('\n'),
  'content/rounds/0/swatches/s-01.md': String(swatchText),
  [ledger]:
    'leaves:\n  - {leaf: S-01 · 1 of 1, done: printed, on: 2026-09-30, fingerprint: "0123456789abcdef"}\n',
};
const answered = (received: string, result = 'passed') =>
  `round: 0\nreceived: ${received}\nresults:\n${['S-01', 'Q-01', 'B-01'].map((id) => `  ${id}: {result: ${result}}\n`).join('')}`;

async function run(folder: string, name: string, today = '2026-11-01', words: readonly string[] = []) {
  const command = commandList.find((each) => each.name === name);
  if (command === undefined) throw new Error(`there is no command ${name}`);
  const around = testSurroundings({currentFolder: folder, today});
  return runCommand(command, {words, options: {}}, around);
}

/** `rule file:line:column` of all that was found by a rule of the year. */
function found({findings}: Outcome): readonly string[] {
  const ofYear =
    /^(sent-item-gone|item-without-requirement|second-answer|answer-without-posting|future-date)$/;
  return findings
    .filter(({rule}) => ofYear.test(rule))
    .map(({rule, file, place}) => `${rule} ${file}:${place.line}:${place.column}`);
}

/** That nothing written in the folder was changed by asking; status and check must always answer. */
async function asked(folder: string, today?: string): Promise<Outcome> {
  const read = async () =>
    Promise.all((await filesIn(folder)).map((file) => readFile(path.join(folder, file), 'latin1')));
  const before = await read();
  const checked = await run(folder, 'check', today);
  expect((await run(folder, 'status', today)).text).toMatch(/S-01|1 /);
  expect(await read()).toEqual(before);
  for (const {hint} of checked.findings) expect(hint).not.toBe('');
  return checked;
}

describe('after a posting', () => {
  test('an item is given another id: found in the item and in what was sent; the answer names what was sent', async () => {
    const renamed = String(swatchText).replace('requirement: S-01', 'requirement: S-02');
    const folder = await smallBinder({...sent, [swatch]: renamed});
    expect(found(await asked(folder))).toEqual([
      'sent-item-gone content/rounds/0/sent.yaml:4:3',
      `item-without-requirement ${swatch}:2:14`,
    ]);
    const {written} = await run(folder, 'answer');
    expect(written).toEqual(['content/assessments/round-0.yaml']);
    expect(await readFile(path.join(folder, String(written[0])), 'utf8')).toMatch(
      /\n {2}S-01: \{result: open\}\n/,
    );
    await expect(run(folder, 'send')).rejects.toThrow(UsageError);
    await writeFile(path.join(folder, swatch), String(swatchText));
    expect(found(await asked(folder))).toEqual([]);
  });

  test('the file of an item is deleted: found, and where a copy lies is said', async () => {
    const folder = await smallBinder({...sent, [swatch]: null});
    const checked = await asked(folder);
    expect(found(checked)).toContain('sent-item-gone content/rounds/0/sent.yaml:4:3');
    expect(checked.findings.find(({rule}) => rule === 'sent-item-gone')?.hint).toMatch(/a copy lies/);
    expect((await run(folder, 'answer')).written).toHaveLength(1);
  });

  test('a requirement is dropped from the syllabus: found in what was sent; the answer still names it', async () => {
    const dropped = String(syllabus).replace(
      /- \{id: B-01.*/,
      '- {id: B-02, kind: review, title: Another book}',
    );
    expect(dropped).not.toBe(syllabus);
    const folder = await smallBinder({...sent, 'content/syllabus.yaml': dropped});
    expect(found(await asked(folder))).toContain('sent-item-gone content/rounds/0/sent.yaml:6:3');
    const {written} = await run(folder, 'answer');
    expect(await readFile(path.join(folder, String(written[0])), 'utf8')).toContain(
      '  B-01: {result: open}\n',
    );
  });

  test('the record of the posting is torn: found with its place, and what it does not say is not made up', async () => {
    const folder = await smallBinder({...sent, [sentRound]: 'round: 0\nsent: [\n'});
    const {findings} = await asked(folder);
    const torn = findings.filter(({rule, file}) => rule === 'yaml-syntax' && file === sentRound);
    expect(torn.map(({severity, place}) => [severity, place.line])).toEqual([['error', 3]]);
    await expect(run(folder, 'send')).rejects.toThrow(UsageError);
  });
});

test('two answers to one round: found in the second, which refers to the first; then one is taken away', async () => {
  const folder = await smallBinder({
    ...sent,
    'content/assessments/round-0.yaml': answered('2026-10-20'),
    'content/assessments/round-1.yaml': answered('2026-10-21', 'rework'),
  });
  const checked = await asked(folder);
  expect(found(checked)).toEqual(['second-answer content/assessments/round-1.yaml:1:8']);
  const [{related = []} = {}] = checked.findings.filter(({rule}) => rule === 'second-answer');
  expect(related.map(({file}) => file)).toEqual(['content/assessments/round-0.yaml']);
  await expect(run(folder, 'answer')).rejects.toThrow(/every round that was sent has its answer/);
});

describe('the clock was set back', () => {
  test('before the last print and posting: the ledger is doubted, and nothing is refused', async () => {
    const folder = await smallBinder({
      ...sent,
      'content/binder.yaml': String(settings),
      'content/assessments/round-0.yaml': answered('2026-10-20'),
    });
    const early = found(await asked(folder, '2026-09-29'));
    expect(early).toContain('future-date content/assessments/round-0.yaml:2:11');
    expect(early).toContain(`future-date ${ledger}:2:46`);
    expect(found(await asked(folder, '2026-10-21'))).toEqual([]);
  });

  test('when the answer is laid down: its date before the posting is found, with the clock named, and can be mended', async () => {
    const folder = await smallBinder(sent);
    const {written} = await run(folder, 'answer', '2026-09-15');
    const checked = await asked(folder);
    expect(found(checked)).toEqual([
      expect.stringMatching(/^answer-without-posting content\/assessments\/round-0\.yaml:\d+:11$/),
    ]);
    expect(checked.findings.find(({rule}) => rule === 'answer-without-posting')?.hint).toMatch(/clock/);
    const file = path.join(folder, String(written[0]));
    await writeFile(file, (await readFile(file, 'utf8')).replace('2026-09-15', '2026-10-15'));
    expect(found(await asked(folder))).toEqual([]);
  });
});

test('`answer` asked for twice, in a binder that was posted without `send`: the first file is waited for', async () => {
  const folder = await smallBinder();
  expect((await run(folder, 'answer')).written).toEqual(['content/assessments/round-0.yaml']);
  await expect(run(folder, 'answer')).rejects.toThrow(
    new UsageError('`content/assessments/round-0.yaml` is there already; write the answer into it'),
  );
  await writeFile(path.join(folder, 'content/assessments/round-0.yaml'), answered('2026-10-01', 'rework'));
  expect((await run(folder, 'answer')).written).toEqual(['content/assessments/round-1.yaml']);
});
