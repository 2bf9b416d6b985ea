import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {appendToLedger, readLedger} from '../../src/commands/ledger-file.ts';
import type {LedgerEntry} from '../../src/model/schema/print-ledger.ts';

const entry: LedgerEntry = {
  leaf: 'S-07 · 2 of 3',
  done: 'printed',
  on: '2026-03-02',
  // All digits: without quotation marks it would be read as a number.
  fingerprint: '1234567890123456',
};
const line = '{leaf: S-07 · 2 of 3, done: printed, on: 2026-03-02, fingerprint: "1234567890123456"}';

function append(before: string | Buffer | null, ...added: readonly LedgerEntry[]): string | null {
  const bytes = before === null ? null : Buffer.from(before);
  const whole = appendToLedger(bytes, added.length === 0 ? [entry] : added);
  return whole === null ? null : Buffer.from(whole).toString('latin1');
}
const latin1 = (text: string) => Buffer.from(text).toString('latin1');

test('a new ledger says what it is, and has one line a leaf', () => {
  const text = Buffer.from(appendToLedger(null, [entry, {...entry, done: 'taken out'}]) ?? []).toString();
  expect(text).toMatch(/^# What lies in the paper binder/);
  expect(text.trimEnd().split('\n').slice(-3)[0]).toBe('leaves:');
  expect(readLedger(text)).toEqual({entries: [entry, {...entry, done: 'taken out'}], findings: []});
});

describe('what stood there stays, byte for byte', () => {
  const old = '  - {leaf: S-01 · 1 of 1, done: printed, on: 2026-03-01}';
  test.each<[string, string, string]>([
    ['plainly', `leaves:\n${old}\n`, `  - ${line}\n`],
    ['without a last line end', `leaves:\n${old}`, `\n  - ${line}\n`],
    [
      'with a mark at the beginning and the line ends of Windows',
      `\uFEFFleaves:\r\n${old}\r\n`,
      `  - ${line}\r\n`,
    ],
    ['with a comment and an empty line at the end', `leaves:\n${old} # late\n\n# so far\n`, `  - ${line}\n`],
    ['not indented', 'leaves:\n- {leaf: S-01 · 1 of 1, done: printed, on: 2026-03-01}\n', `- ${line}\n`],
    [
      'over several lines',
      'leaves:\n    - leaf: S-01 · 1 of 1\n      done: printed\n      on: 2026-03-01\n',
      `    - ${line}\n`,
    ],
    ['nothing but comments', '# mine\n', `leaves:\n  - ${line}\n`],
    ['an empty list', 'leaves:\n', `  - ${line}\n`],
    ['nothing', '', `leaves:\n  - ${line}\n`],
  ])('%s', (_, before, added) => {
    expect(append(before)).toBe(latin1(before + added));
  });

  test('letters that are no UTF-8', () => {
    const before = Buffer.concat([
      Buffer.from('# caf'),
      Buffer.from([0xe9]),
      Buffer.from(`\nleaves:\n${old}\n`),
    ]);
    expect(append(before)).toBe(before.toString('latin1') + latin1(`  - ${line}\n`));
  });

  test('whatever was recorded before, in any order', () => {
    const entries = fc.array(
      fc.record({
        leaf: fc.constantFrom('S-07 · 1 of 1', 'Tab 2 · 1 of 1', 'References · 2 of 2'),
        done: fc.constantFrom('printed' as const, 'taken out' as const),
        on: fc.constantFrom('2026-03-02', '2026-11-30'),
        fingerprint: fc.string({unit: fc.constantFrom(...'0123456789abcdef'), minLength: 16, maxLength: 16}),
      }),
      {minLength: 1, maxLength: 5},
    );
    fc.assert(
      fc.property(entries, entries, (first, second) => {
        const one = appendToLedger(null, first);
        const two = appendToLedger(one, second);
        expect(Buffer.from(two ?? []).subarray(0, one?.length)).toEqual(one);
        expect(readLedger(Buffer.from(two ?? []).toString()).entries).toEqual([...first, ...second]);
      }),
    );
  });
});

test.each([
  ['a list in brackets', 'leaves: []\n'],
  [
    'something after the list',
    'leaves:\n  - {leaf: S-01 · 1 of 1, done: printed, on: 2026-03-01}\nnotes: x\n',
  ],
  ['an end mark', 'leaves:\n  - {leaf: S-01 · 1 of 1, done: printed, on: 2026-03-01}\n...\n'],
  ['something else under the name', 'leaves: many\n'],
  ['no YAML', 'leaves: [\n'],
])('%s: nothing is added where it would not be read', (_, before) => {
  expect(append(before)).toBeNull();
});

test('a faulty line is told, and the others are read', () => {
  const {entries, findings} = readLedger(
    'leaves:\n  - {leaf: S-01 · 1 of 1, done: printed, on: last week}\n  - {leaf: S-02 · 1 of 1, done: printed, on: 2026-03-01}\n',
  );
  expect(entries?.map(({leaf}) => leaf)).toContain('S-02 · 1 of 1');
  expect(findings).toMatchObject([
    {rule: 'field-shape', file: 'content/print-ledger.yaml', place: {line: 2}},
  ]);
});
