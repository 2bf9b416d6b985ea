import {describe, expect, test} from 'vitest';
import {binderPdf, changedPdf, onlyPdf} from '../../src/commands/last-built.ts';
import {type BuiltFile, ledgerEntries} from '../../src/commands/ledger-entries.ts';

const on = '2026-03-02';
const all = {sheets: null, drafts: false, on};

/** A file of leaves, each with the fingerprint that stands after it; a draft's fingerprint begins with an exclamation mark. */
function file(
  path: string,
  leaves: Readonly<Record<string, string>>,
  gone: readonly string[] = [],
): BuiltFile {
  return {
    path,
    gone,
    leaves: Object.entries(leaves).map(([leaf, fingerprint], index) => ({
      leaf,
      fingerprint,
      pages: [index],
      isDraft: fingerprint.startsWith('!'),
    })),
  };
}

const inBinder = new Map<string, string | null>([
  ['S-01 · 1 of 1', 'a'],
  ['S-02 · 1 of 2', 'b'],
  ['S-02 · 2 of 2', 'c'],
  ['S-03 · 1 of 1', null],
]);
const printed = (leaf: string, fingerprint: string) => ({leaf, done: 'printed', on, fingerprint});
const takenOut = (leaf: string) => ({leaf, done: 'taken out', on});

test('what lies in the binder as it is needs no line; what was recorded without a fingerprint does', () => {
  const built = file(binderPdf, {
    'S-01 · 1 of 1': 'a',
    'S-02 · 1 of 2': 'b',
    'S-02 · 2 of 2': 'd',
    'S-03 · 1 of 1': 'e',
  });
  expect(ledgerEntries(built, inBinder, all)).toEqual({
    entries: [printed('S-02 · 2 of 2', 'd'), printed('S-03 · 1 of 1', 'e')],
    drafts: [],
  });
});

describe('leaves that have no place any more', () => {
  test('of the whole binder: every one that is not in it', () => {
    const built = file(binderPdf, {'S-02 · 1 of 1': 'd', 'S-03 · 1 of 1': 'e'});
    expect(ledgerEntries(built, inBinder, all).entries).toEqual([
      printed('S-02 · 1 of 1', 'd'),
      printed('S-03 · 1 of 1', 'e'),
      takenOut('S-01 · 1 of 1'),
      takenOut('S-02 · 1 of 2'),
      takenOut('S-02 · 2 of 2'),
    ]);
  });

  test('of some sheets: those of the same sheets', () => {
    const built = file(onlyPdf, {'S-02 · 1 of 1': 'd'});
    expect(ledgerEntries(built, inBinder, all).entries).toEqual([
      printed('S-02 · 1 of 1', 'd'),
      takenOut('S-02 · 1 of 2'),
      takenOut('S-02 · 2 of 2'),
    ]);
  });

  test('of the changed leaves: those that the slip says, so far as they are still there', () => {
    const built = file(changedPdf, {'S-02 · 1 of 2': 'd'}, ['S-01 · 1 of 1', 'S-09 · 1 of 1']);
    expect(ledgerEntries(built, inBinder, all).entries).toEqual([
      printed('S-02 · 1 of 2', 'd'),
      takenOut('S-01 · 1 of 1'),
    ]);
  });
});

test('named sheets only: nothing is said of the others', () => {
  const built = file(binderPdf, {'S-02 · 1 of 1': 'd', 'S-04 · 1 of 1': 'e'});
  expect(ledgerEntries(built, inBinder, {...all, sheets: new Set(['S-02', 'S-03'])}).entries).toEqual([
    printed('S-02 · 1 of 1', 'd'),
    takenOut('S-02 · 1 of 2'),
    takenOut('S-02 · 2 of 2'),
    takenOut('S-03 · 1 of 1'),
  ]);
});

describe('drafts', () => {
  const built = file(onlyPdf, {'S-01 · 1 of 1': 'x', 'S-02 · 1 of 1': '!d'});

  test('are passed over, with what they would leave no place for', () => {
    expect(ledgerEntries(built, inBinder, all)).toEqual({
      entries: [printed('S-01 · 1 of 1', 'x')],
      drafts: ['S-02'],
    });
  });

  test('are recorded as drafts when that is asked for', () => {
    expect(ledgerEntries(built, inBinder, {...all, drafts: true})).toEqual({
      entries: [
        printed('S-01 · 1 of 1', 'x'),
        {...printed('S-02 · 1 of 1', '!d'), draft: true},
        takenOut('S-02 · 1 of 2'),
        takenOut('S-02 · 2 of 2'),
      ],
      drafts: [],
    });
  });

  test('of a binder that is nothing but a draft, nothing is taken out either', () => {
    const draft = file(binderPdf, {'S-01 · 1 of 1': '!x'});
    expect(ledgerEntries(draft, inBinder, all)).toEqual({entries: [], drafts: ['S-01']});
  });
});
