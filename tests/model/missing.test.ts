import {describe, expect, test} from 'vitest';
import {type Finding, fileStart} from '../../src/diagnostics/finding.ts';
import {
  amountMissing,
  fitsAnEvening,
  type Missing,
  missingIn,
  needsNeedles,
} from '../../src/model/missing.ts';
import {sampleBinder} from '../support/sample-binder.ts';

const words = (count: number): Missing => ({task: 'words', count, inShort: `${count} words`});
const one = (task: Missing['task']): Missing => ({task, count: 1, inShort: task});

function itemWith(fields: object, kind = 'question') {
  const [item] = sampleBinder({items: [{kind, requirement: 'Q-01', ...fields} as never]}).items;
  if (!item) throw new Error('a binder of one item has one item');
  return item;
}

function finding(rule: string, more: Partial<Finding> = {}): Finding {
  const file = 'content/Q-01.md';
  return {rule, severity: 'error', file, place: fileStart, message: '', hint: '', ...more};
}

describe('what is missing', () => {
  const item = itemWith({status: 'in work'});

  test('errors and what is not there yet count; warnings, information and other files do not', () => {
    const missing = missingIn(item, [
      finding('unknown-needle-size'),
      finding('too-few-words', {severity: 'info', lacks: {count: 40, inShort: '40 words'}}),
      finding('uneven-edges', {severity: 'warning'}),
      finding('unused-photo', {severity: 'info'}),
      finding('missing-field', {file: 'content/Q-02.md'}),
      finding('unfinished-item'),
    ]);
    expect(missing.map(({inShort}) => inShort)).toEqual(['1 slip to mend', '40 words']);
  });

  test('the same gap stands once, with its count', () => {
    const missing = missingIn(item, [
      finding('broken-cross-reference'),
      finding('row-count'),
      finding('raw-html'),
      finding('row-count'),
    ]);
    expect(missing).toEqual([
      {task: 'mending', count: 2, inShort: '2 slips to mend'},
      {task: 'rows', count: 2, inShort: 'rows that do not add up'},
    ]);
  });

  const measured = [{when: 'before blocking', stitches: ['20 over 10 cm']}];
  test.each([
    ['in work and nothing measured', {status: 'in work'}, true],
    ['without a status', {}, true],
    ['measured already', {status: 'in work', measured}, false],
    ['with a day of finishing', {status: 'in work', finished: '2026-03-01'}, false],
    ['finished', {status: 'finished'}, false],
  ])('a piece %s: on the needles?', (_, fields, isOnNeedles) => {
    const gauge = finding('too-few-gauge-counts', {lacks: {count: 6, inShort: 'gauge'}});
    const missing = missingIn(itemWith(fields, 'swatch'), [gauge]).map(({inShort}) => inShort);
    expect(missing).toEqual([isOnNeedles ? 'still on the needles' : 'gauge']);
  });
});

test.each([
  [[], 0],
  [[words(1)], 1],
  [[words(100)], 1],
  [[words(101)], 2],
  [[words(250), one('photos'), {task: 'citations', count: 2, inShort: ''} as const], 6],
])('the amount of %j', (missing, amount) => {
  expect(amountMissing(missing)).toBe(amount);
});

test.each<[Missing['task'], boolean]>([
  ['words', true],
  ['citations', true],
  ['photos', true],
  ['measuring', true],
  ['facts', true],
  ['mending', true],
  ['rows', false],
  ['knitting', false],
  ['waiting', false],
])('one evening is enough for %s: %s', (task, isEnough) => {
  expect(fitsAnEvening([words(10), one(task)])).toBe(isEnough);
  expect(needsNeedles([one(task)])).toBe(task === 'knitting' || task === 'waiting');
});

test('250 words fit into an evening, 251 do not', () => {
  expect(fitsAnEvening([words(250)])).toBe(true);
  expect(fitsAnEvening([words(251)])).toBe(false);
});
