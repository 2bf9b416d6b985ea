import {execFileSync, spawnSync} from 'node:child_process';
import {writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {commandList} from '../../src/commands/command-list.ts';
import {emptyFolder, swatchleaf} from '../support/run-cli.ts';

const names = commandList.map(({name}) => name);

function isHere(shell: string): boolean {
  return spawnSync(shell, ['-c', 'exit']).status === 0;
}

async function scriptFile(shell: string): Promise<string> {
  const {code, out} = await swatchleaf(['completion', shell]);
  expect(code).toBe(0);
  const file = path.join(await emptyFolder(), `swatchleaf.${shell}`);
  await writeFile(file, out);
  return file;
}

describe.runIf(isHere('bash'))('bash itself completes', () => {
  /** What bash offers for the last of `words`, which it takes apart as it does at the prompt. */
  function offered(file: string, words: readonly string[]): readonly string[] {
    const program = `
      source "$1"; shift
      [[ $(complete -p swatchleaf) == *'-F _swatchleaf swatchleaf' ]] || exit 9
      COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _swatchleaf; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const out = execFileSync('bash', ['--norc', '-c', program, 'bash', file, 'swatchleaf', ...words], {
      encoding: 'utf8',
    });
    return out.split('\n').filter((line) => line !== '');
  }

  test.each<[readonly string[], readonly string[]]>([
    [[''], [...names, 'help']],
    [['ch'], ['check']],
    [['--v'], ['--version', '--verbose']],
    [['--verbose', 'ini'], ['init']],
    [['check', '--f'], ['--format']],
    [
      ['check', '--format', ''],
      ['text', 'json', 'sarif'],
    ],
    [['check', '--format', '=', 'j'], ['json']],
    [
      ['check', '--format', '='],
      ['text', 'json', 'sarif'],
    ],
    [
      ['init', '--paper', ''],
      ['A4', 'Letter'],
    ],
    [['init', 'check', '--ex'], ['--example']],
    [['completion', 'z'], ['zsh']],
    [['help', 'rep'], ['reprint']],
    // Folders and what cannot be known beforehand are left to bash, which completes file names.
    [['check', ''], []],
    [['build', '--browser', ''], []],
  ])('%j', async (words, expected) => {
    const given = offered(await scriptFile('bash'), words);
    expect([...given].toSorted()).toEqual([...expected].toSorted());
  });
});

test.each(['bash', 'zsh', 'fish'])('the script for %s has every command and every option', async (shell) => {
  const {out} = await swatchleaf(['completion', shell]);
  for (const {name, options} of commandList) {
    expect(out).toMatch(new RegExp(`(^|[\\s'])${name}[\\s':)]`, 'm'));
    for (const {spelling, choices = []} of options) {
      const flag = spelling.split(' ')[0]?.slice(2) ?? '';
      expect(out).toMatch(shell === 'fish' ? new RegExp(`-l ${flag} `) : new RegExp(`--${flag}\\b`));
      for (const choice of choices) expect(out).toContain(choice);
    }
  }
});

test.each(['bash', 'zsh', 'fish'].filter(isHere))('%s finds no fault with its script', async (shell) => {
  expect(execFileSync(shell, ['-n', await scriptFile(shell)], {encoding: 'utf8'})).toBe('');
});

test('another shell: exit 2 and which there are', async () => {
  const {code, out, err} = await swatchleaf(['completion', 'csh']);
  expect({code, out}).toEqual({code: 2, out: ''});
  expect(err).toBe('swatchleaf: no completion is known for `csh`; name bash, zsh or fish\n');
});
