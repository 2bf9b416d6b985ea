import {describe, expect, test} from 'vitest';
import {type Asked, askForSettings} from '../../src/commands/ask-for-settings.ts';
import {testSurroundings} from '../support/surroundings.ts';

const nothing: Asked = {name: null, paper: null, rings: null, units: null, style: null};

/** A person who gives these answers, one after the other, and the questions that were put. */
function person(...answers: readonly string[]) {
  const asked: string[] = [];
  const left = [...answers];
  const ask = async (question: string) => {
    asked.push(question);
    const answer = left.shift();
    if (answer === undefined) throw new Error(`a question too many: ${question}`);
    return answer;
  };
  return {asked, around: testSurroundings({ask})};
}

describe('at a terminal', () => {
  test('what is missing is asked for, with the usual choice in brackets', async () => {
    const {asked, around} = person(' Ann Weaver ', '', '', '', '');
    expect(await askForSettings(nothing, around)).toEqual({
      name: 'Ann Weaver',
      paper: 'A4',
      rings: '2',
      units: 'metric',
      style: 'author-date',
    });
    expect(asked).toEqual([
      'Your name, as it is printed: ',
      'Paper, A4 or Letter [A4]: ',
      'Rings, 2, 3 or 4 [2]: ',
      'Units that stand first, metric or inch [metric]: ',
      'Citations, author-date, note or numeric [author-date]: ',
    ]);
  });

  test('rings and units follow the paper unless they are said', async () => {
    const {around} = person('A', 'letter', '', '', '');
    expect(await askForSettings(nothing, around)).toMatchObject({paper: 'Letter', rings: '3', units: 'inch'});
    const other = person('A', '4', 'METRIC', '');
    expect(await askForSettings({...nothing, paper: 'Letter'}, other.around)).toMatchObject({
      rings: '4',
      units: 'metric',
    });
  });

  test('what cannot be is said, and asked for again', async () => {
    const {asked, around} = person('A', 'A5', 'A4', '', '', '');
    expect((await askForSettings(nothing, around)).paper).toBe('A4');
    expect(asked.filter((question) => question.startsWith('Paper'))).toHaveLength(2);
    expect(around.said).toEqual(['`A5` cannot be: write A4 or Letter, or only press Enter for A4.']);
  });

  test('nothing is asked that was said', async () => {
    const all = {name: 'A', paper: 'A4', rings: '4', units: 'inch', style: 'note'};
    const {asked, around} = person();
    expect(await askForSettings(all, around)).toEqual(all);
    expect(asked).toEqual([]);
  });
});

test('without a terminal the usual choices are taken, and the name is left to be written', async () => {
  expect(await askForSettings(nothing, testSurroundings())).toEqual({
    name: null,
    paper: 'A4',
    rings: '2',
    units: 'metric',
    style: 'author-date',
  });
});
