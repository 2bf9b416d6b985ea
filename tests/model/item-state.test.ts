import {expect, test} from 'vitest';
import {fileStart} from '../../src/diagnostics/finding.ts';
import type {Binder} from '../../src/model/binder.ts';
import {binderStatus} from '../../src/model/binder-status.ts';
import {statesOf} from '../../src/model/item-state.ts';
import {sampleBinder} from '../support/sample-binder.ts';

interface Year {
  readonly status?: string | null;
  readonly ledger?: readonly string[];
  readonly sent?: readonly number[];
  readonly answers?: Readonly<Record<number, 'passed' | 'rework' | 'open'>>;
}

/** A binder of the one requirement S-01 after what happened; `status: null` is an item without one, none is no item. */
function binderAfter({status, ledger = [], sent = [], answers = {}}: Year): Binder {
  const items =
    status === undefined ? [] : [{kind: 'swatch' as const, requirement: 'S-01', ...(status && {status})}];
  const blank = sampleBinder({items});
  const {places} = blank.syllabus;
  const requirement = {
    id: 'S-01',
    kind: 'swatch',
    title: 'Rib',
    asks: null,
    tiedTo: [],
    limits: {},
    place: fileStart,
    path: [],
  } as const;
  return {
    ...blank,
    syllabus: {
      ...blank.syllabus,
      sections: [{number: 1, title: 'Swatches', tab: 'Swatches', requirements: [requirement]}],
    },
    ledger: {
      ...blank.ledger,
      entries: ledger.map((line) => {
        const [leaf = '', done = ''] = line.split(': ');
        return {leaf, done: done === 'printed' ? 'printed' : 'taken out', on: '2026-02-01'} as const;
      }),
    },
    sentRounds: sent.map((round) => ({
      round,
      sent: '2026-03-01',
      items: {'S-01': 'swatches/s-01.md'},
      file: `content/rounds/${round}/sent.yaml`,
      places,
    })),
    assessments: Object.entries(answers).map(([round, result]) => ({
      round: Number(round),
      received: '2026-06-01',
      results: {'S-01': {result}},
      file: `content/assessments/round-${round}.yaml`,
      places,
    })),
  };
}

test.each<[string, Year, string]>([
  ['there is no item', {}, 'planned'],
  ['it says that it is planned', {status: 'planned'}, 'planned'],
  ['it does not say how far it is', {status: null}, 'in work'],
  ['it is in work', {status: 'in work'}, 'in work'],
  ['it is finished', {status: 'finished'}, 'finished'],
  ['a leaf of it was printed', {status: 'finished', ledger: ['S-01 · 1 of 2: printed']}, 'printed'],
  ['a leaf of another was printed', {status: 'finished', ledger: ['S-10 · 1 of 2: printed']}, 'finished'],
  [
    'its leaf was taken out again',
    {status: 'finished', ledger: ['S-01 · 1 of 1: printed', 'S-01 · 1 of 1: taken out']},
    'finished',
  ],
  ['it was printed and is in work again', {status: 'in work', ledger: ['S-01 · 1 of 1: printed']}, 'in work'],
  ['it was sent', {status: 'finished', sent: [0]}, 'sent'],
  [
    'the answer is laid down and not filled in',
    {status: 'finished', sent: [0], answers: {0: 'open'}},
    'sent',
  ],
  ['it passed', {status: 'finished', sent: [0], answers: {0: 'passed'}}, 'passed'],
  ['it came back', {status: 'finished', sent: [0], answers: {0: 'rework'}}, 'rework'],
  ['it was sent again', {status: 'finished', sent: [0, 1], answers: {0: 'rework'}}, 'sent'],
  [
    'it passed the second time',
    {status: 'rework', sent: [0, 1], answers: {0: 'rework', 1: 'passed'}},
    'passed',
  ],
  ['it came back twice', {status: 'rework', sent: [0, 1], answers: {0: 'rework', 1: 'rework'}}, 'rework'],
  ['answers were written in without a record of sending', {status: 'sent', answers: {0: 'passed'}}, 'passed'],
])('%s: %s', (_, year, state) => {
  const binder = binderAfter(year);
  expect(statesOf(binder).get('S-01')).toBe(state);
  expect(binderStatus(binder, []).counts).toMatchObject({[state]: 1});
});
