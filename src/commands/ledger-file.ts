import type {Finding} from '../diagnostics/finding.ts';
import {validateFields} from '../model/fields/validate-fields.ts';
import {ledgerPath} from '../model/read-binder-files.ts';
import {readingFinding} from '../model/reading-rules.ts';
import {type LedgerEntry, printLedgerSchema} from '../model/schema/print-ledger.ts';
import {appendLines} from '../support/append-lines.ts';
import {readYaml} from '../yaml/read-yaml.ts';

const head = [
  '# What lies in the paper binder: each leaf that was printed or taken out, in the order in which it was done.',
  '# `swatchleaf printed` adds lines at the end and changes none. Two copies become one by keeping the lines of both.',
  'leaves:',
];

/** What the ledger says; null when it cannot be read at all. */
export interface ReadLedger {
  readonly entries: readonly LedgerEntry[] | null;
  readonly findings: readonly Finding[];
}

export function readLedger(text: string): ReadLedger {
  const {value, places, problems} = readYaml(text);
  if (problems.length > 0) {
    const faults = problems.map((problem) => ({rule: 'yaml-syntax' as const, ...problem}));
    return {entries: null, findings: faults.map((fault) => readingFinding(ledgerPath, fault))};
  }
  const {fields, faults} = validateFields(printLedgerSchema, {value: value ?? {}, places, at: []});
  return {
    entries: fields?.leaves ?? null,
    findings: faults.map((fault) => readingFinding(ledgerPath, fault)),
  };
}

/**
 * The ledger with `added` at its end; every byte that stood there stays. `before` is null for a new ledger. Null when the
 * file does not end with its list of leaves, so that lines at its end would not be read as leaves.
 */
export function appendToLedger(before: Uint8Array | null, added: readonly LedgerEntry[]): Uint8Array | null {
  const old = before === null ? '' : Buffer.from(before).toString('utf8');
  // A list may be indented as its writer likes, but in one way.
  const indent = /^( *)- [^\n]*$/m.exec(old)?.[1] ?? '  ';
  const lines = added.map((entry) => `${indent}- ${entryLine(entry)}`);
  if (before === null) lines.unshift(...head);
  else if (!/^\uFEFF?leaves *:/m.test(old)) lines.unshift('leaves:');
  const whole = appendLines(before, lines);
  const [was, is] = [readLedger(old).entries, readLedger(Buffer.from(whole).toString('utf8')).entries];
  if (was === null || is === null || is.length !== was.length + added.length) return null;
  const isRead = added.every(
    (entry, index) => entryLine(is[was.length + index] ?? entry) === entryLine(entry),
  );
  return isRead ? whole : null;
}

/** One line a leaf, so that files can be compared and merged line by line. A fingerprint may look like a number: it is quoted. */
function entryLine({leaf, done, on, fingerprint, draft}: LedgerEntry): string {
  const parts = [`leaf: ${leaf}`, `done: ${done}`, `on: ${on}`];
  if (fingerprint !== undefined) parts.push(`fingerprint: "${fingerprint}"`);
  if (draft === true) parts.push('draft: true');
  return `{${parts.join(', ')}}`;
}
