import {existsSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {type StatusWishes, tellStatus} from '../../src/commands/status/tell-status.ts';
import {casesIn} from '../support/cases.ts';
import {expectFolder} from '../support/expect-folder.ts';
import {checkCase} from '../support/read-case.ts';

// A case is a binder of its own, with the settings and the library of the rules' base.
const settings = 'tests/status/settings';
const whole: StatusWishes = {ids: [], tiedTo: null, isJson: false};

async function openCase(folder: string) {
  const {binder, findings} = await checkCase([settings, folder]);
  if (binder === null) throw new Error(`${folder} is no binder`);
  return (wishes: Partial<StatusWishes>, columns = 80) =>
    tellStatus(binder, findings, {...whole, ...wishes}, columns);
}

test.each(casesIn('tests/status/cases', 1))('$name', async ({folder, expected}) => {
  const tell = await openCase(folder);
  expectFolder(expected, {
    'whole.txt': tell({}),
    'narrow.txt': tell({}, 48),
    's-05-and-s-08.txt': tell({ids: ['S-05', 'S-08']}),
    'for-s-05.txt': tell({tiedTo: 'S-05'}),
    'whole.json': tell({isJson: true}),
    's-08.json': tell({ids: ['S-08'], isJson: true}),
  });
});

describe('a year of work', async () => {
  const folder = join('tests/status/cases', 'a-year-of-work');
  expect(existsSync(folder)).toBe(true);
  const tell = await openCase(folder);

  test.each([40, 64, 80, 120])('no line is longer than %i columns', (columns) => {
    const texts = [
      tell({}, columns),
      tell({ids: ['S-08', 'S-04']}, columns),
      tell({tiedTo: 'S-05'}, columns),
    ];
    for (const line of texts.join('').split('\n'))
      expect([...line].length, line).toBeLessThanOrEqual(columns);
  });

  test('bars are made of signs that every terminal has', () => {
    const bars = tell({})
      .split('\n')
      .filter((line) => /#{2}/.test(line));
    expect(bars.length).toBeGreaterThan(0);
    for (const bar of bars) expect(bar).toMatch(/^[\u0020-\u007e]+$/);
  });

  test('an id that the syllabus does not name: the nearest one is suggested', () => {
    expect(() => tell({ids: ['S-80']})).toThrow(/names no `S-80`; did you mean `S-08`\?/);
    expect(() => tell({tiedTo: 'XYZ-1'})).toThrow(/names no `XYZ-1`/);
  });
});
