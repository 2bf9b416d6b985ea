import {expect, test} from 'vitest';
import type {Item} from '../../src/model/binder.ts';
import {kinds} from '../../src/model/kinds.ts';
import {resolveLimits} from '../../src/model/resolve-limits.ts';
import {boxQuestions, selfCheckOf} from '../../src/model/self-check.ts';
import {sampleBinder} from '../support/sample-binder.ts';

function itemOf(kind: Item['kind'], fields: object = {}): Item {
  const [item] = sampleBinder({items: [{kind, requirement: 'S-01', ...fields}]}).items;
  if (!item) throw new Error('a binder of one item has one item');
  return item;
}

test.each(kinds)(
  '%s: there is something to look over, each sentence once, short enough for its line',
  (kind) => {
    const questions = selfCheckOf(itemOf(kind));
    expect(questions.length).toBeGreaterThanOrEqual(3);
    expect(new Set(questions).size).toBe(questions.length);
    for (const question of questions) expect(question).toMatch(/^[A-Z].{10,52}\.$/);
    for (const question of boxQuestions) expect(question).toMatch(/^[A-Z].{10,}\.$/);
  },
);

test('knitting: ends, pins and the tag are always asked for', () => {
  for (const kind of ['swatch', 'project'] as const) {
    const all = selfCheckOf(itemOf(kind)).join(' ');
    for (const word of [/Ends/, /Pins/, /tag/]) expect(all).toMatch(word);
  }
});

test.each([
  ['ssk', /slipped knitwise/],
  ['mattress seam in garter stitch', /row for row/],
  ['German short row', /hole/],
  ['three-needle bind-off and grafting', /grafted row/],
  ['one-row buttonhole', /button goes through/],
  ['picking up along a side edge', /band/],
])('a technique brings what it asks for: %s', (name, question) => {
  const plain = selfCheckOf(itemOf('swatch', {techniques: [{name: 'garter stitch'}]}));
  const own = selfCheckOf(itemOf('swatch', {techniques: [{name}]})).filter((one) => !plain.includes(one));
  expect(own.join(' ')).toMatch(question);
  expect(selfCheckOf(itemOf('pattern', {techniques: [{name}]})).join(' ')).not.toMatch(question);
});

test("the syllabus's own come last: those of the kind, then those of the requirement, each once", () => {
  const limits = resolveLimits({'self-check': ['A.', 'B.']}, {'self-check': ['B.', 'C.'], words: {to: 5}});
  expect(limits).toEqual({'self-check': ['A.', 'B.', 'C.'], words: {to: 5}});
  const item = itemOf('letter');
  const requirement = {limits} as Item['requirement'];
  expect(selfCheckOf({...item, requirement} as Item).slice(-3)).toEqual(['A.', 'B.', 'C.']);
});
