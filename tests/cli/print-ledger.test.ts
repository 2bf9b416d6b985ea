import {appendFile, readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {finishPdf} from '../../src/print/finish-pdf.ts';
import {type PdfFacts, readPdfFacts} from '../../src/print/pdf-facts.ts';
import {filesIn, root, smallBinder, swatchleaf} from '../support/run-cli.ts';

const base = path.join(root, 'tests/rules/base/content');
const settings = await readFile(path.join(base, 'binder.yaml'), 'utf8');
const question = await readFile(path.join(base, 'questions/q-01.md'), 'utf8');
const review = await readFile(path.join(base, 'reviews/b-01.md'), 'utf8');
const ledger = 'content/print-ledger.yaml';
/** Each of these runs the program several times, and it may have to share a slow computer. */
const patience = {timeout: 300_000};

async function facts(folder: string, file: string): Promise<PdfFacts> {
  return readPdfFacts(await readFile(path.join(folder, file)));
}

async function labels(folder: string, file: string): Promise<readonly (string | null)[]> {
  return (await facts(folder, file)).pages.map(({label}) => label);
}

async function built(folder: string): Promise<readonly string[]> {
  return (await filesIn(folder)).filter((file) => file.startsWith('build/'));
}

async function ledgerLines(folder: string): Promise<readonly string[]> {
  const lines = (await readFile(path.join(folder, ledger), 'utf8')).split('\n');
  return lines.filter((line) => line.startsWith('  - '));
}

test(
  'printed, written on, the changed leaves printed: nothing twice, nothing left out (on both sides)',
  patience,
  async () => {
    const folder = await smallBinder({'content/binder.yaml': `${settings}sides: duplex\npaper: Letter\n`});
    expect((await swatchleaf(['build', folder])).code).toBe(0);
    const first = await swatchleaf(['printed', folder]);
    expect(first).toMatchObject({code: 0, err: ''});
    const fronts = (await labels(folder, 'build/binder.pdf')).filter((_, page) => page % 2 === 0);
    expect((await ledgerLines(folder)).map((line) => /leaf: ([^,]+),/.exec(line)?.[1])).toEqual(fronts);
    const before = await readFile(path.join(folder, ledger), 'utf8');

    await writeFile(path.join(folder, 'content/questions/q-01.md'), question.replace('better:', 'best:'));
    const changed = await swatchleaf(['build', '--changed', folder]);
    expect(changed.out).toMatch(/^Take out 1 leaf, put in 1 \(of \d+ leaves in all\)\.\n/);
    const part = await facts(folder, 'build/changed.pdf');
    expect(part.pages.map(({label}) => label)).toEqual(['Q-01 · 1 of 1', 'Q-01 · back']);
    // The answer leads to its swatch, which is not among these leaves.
    expect((await facts(folder, 'build/binder.pdf')).links.length).toBeGreaterThan(0);
    expect(part).toMatchObject({links: [], dangling: []});
    expect(part.outline.map(({title}) => title)).toEqual(['Q-01 Which selvedge for which edge?']);
    expect(await labels(folder, 'build/changed-slip.pdf')).toEqual(['Slip · 1 of 1']);

    expect((await swatchleaf(['printed', folder])).out).toMatch(
      /^Recorded from build\/changed\.pdf: 1 leaf printed\.\n/,
    );
    const after = await readFile(path.join(folder, ledger), 'utf8');
    expect(after.startsWith(before)).toBe(true);
    expect(after.slice(before.length)).toMatch(
      /^ {2}- \{leaf: Q-01 · 1 of 1, done: printed, on: 2026-09-28, fingerprint: "[0-9a-f]{16}"\}\n$/,
    );

    const again = await swatchleaf(['build', '--changed', folder]);
    expect(again.out).toMatch(/^No leaf differs/);
    expect(again.err).toMatch(/Removed build\/changed\.pdf/);
    expect(await built(folder)).not.toContain('build/changed.pdf');
    expect(await built(folder)).not.toContain('build/changed-slip.pdf');
  },
);

test(
  'while errors stand elsewhere, a finished item is printed clean with its tag, and not again when the binder is',
  patience,
  async () => {
    const folder = await smallBinder({
      'content/reviews/b-01.md': review.replace('status: finished', 'status: finished\nmystery: 1'),
    });
    const only = await swatchleaf(['build', '--only', 's-01', folder]);
    expect(only.code).toBe(0);
    expect(await built(folder)).toEqual(['build/only-tags.pdf', 'build/only.pdf']);
    const swatch = (await labels(folder, 'build/only.pdf')).map(String);
    expect(swatch.length).toBeGreaterThan(0);
    expect(swatch.every((label) => label.startsWith('S-01 · '))).toBe(true);
    await swatchleaf(['printed', folder]);
    expect(await ledgerLines(folder)).toHaveLength(swatch.length);

    const changed = await swatchleaf(['build', folder, '--changed']);
    const all = (await labels(folder, 'build/binder.pdf')).map(String);
    expect(await labels(folder, 'build/changed.pdf')).toEqual(all.filter((label) => !swatch.includes(label)));
    expect(changed.code).toBe(1);
    expect(changed.out).toMatch(/1 of them is marked as a draft/);
    expect(await built(folder)).not.toContain('build/only.pdf');
    expect(await readFile(path.join(folder, 'build/binder.html'), 'utf8')).toMatch(/Draft: 1 error stands/);

    const before = await readFile(path.join(folder, ledger), 'utf8');
    const refused = await swatchleaf(['printed', 'b-01', folder]);
    expect(refused).toMatchObject({code: 2, out: ''});
    expect(refused.err).toMatch(/marked as a draft/);
    expect(await readFile(path.join(folder, ledger), 'utf8')).toBe(before);

    await writeFile(path.join(folder, 'content/reviews/b-01.md'), review);
    await swatchleaf(['build', folder, '--changed']);
    expect(await labels(folder, 'build/changed.pdf')).toEqual(all.filter((label) => !swatch.includes(label)));
  },
);

test(
  'a section comes with its divider; whatever page counts are remembered, the bytes are the same',
  patience,
  async () => {
    const folder = await smallBinder();
    const binder = path.join(folder, 'build/binder.pdf');
    await swatchleaf(['build', folder]);
    const whole = await readFile(binder);
    const {pages} = await facts(folder, 'build/binder.pdf');
    const names = pages.map(({label}) => String(label));
    // Page counts are remembered by the page labels: here the swatch has lost its last page to the question.
    const last = names.findLastIndex((label) => label.startsWith('S-01'));
    expect(names[last]).not.toBe('S-01 · 1 of 1');
    const poisoned = finishPdf(whole, {
      title: 'Binder',
      author: '',
      subject: '',
      language: 'en-GB',
      date: '2026-09-28',
      labels: names.map((label, page) => (page === last ? 'Q-01 · 2 of 2' : label)),
      sides: 'single',
      notes: {drafts: [], gone: []},
    });
    expect(Buffer.from(poisoned).equals(whole)).toBe(false);
    await writeFile(binder, poisoned);
    await swatchleaf(['build', folder]);
    expect((await readFile(binder)).equals(whole)).toBe(true);

    await writeFile(binder, poisoned);
    const part = await swatchleaf(['build', folder, '--section', 'book REVIEWS']);
    expect(part.out).toBe('build/only.pdf\n');
    expect(await labels(folder, 'build/only.pdf')).toEqual(
      names.filter((label) => /^(Tab 3|B-01) /.test(label)),
    );
    expect((await readFile(binder)).equals(Buffer.from(poisoned))).toBe(true);
  },
);

describe('wrong use', () => {
  test.each([
    [
      'a sheet that there is not',
      ['build', '--only', 'S-10'],
      /the binder has no sheet `S-10`; did you mean `S-01`\?/,
    ],
    [
      'a section that there is not',
      ['build', '--section', 'swatch'],
      /no section is called `swatch`; did you mean `Swatches`\?/,
    ],
    ['no sheet at all', ['build', '--only', '.'], /name what to print after `--only`/],
    [
      'changed leaves of some sheets',
      ['build', '--changed', '--only', 'S-01'],
      /goes with neither `--only` nor `--section`/,
    ],
    ['two folders', ['build', '.', '--only', 'S-01', 'elsewhere'], /cannot both be the binder folder/],
    ['printed before anything was built', ['printed'], /nothing was built yet/],
  ])('%s: exit 2, one line', async (_, args, message) => {
    const cwd = await smallBinder();
    const {code, out, err} = await swatchleaf(args, {cwd});
    expect({code, out}).toEqual({code: 2, out: ''});
    expect(err).toMatch(message);
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(await built(cwd)).toEqual([]);
  });

  test('a ledger that cannot be read is told with its place, and left as it is', patience, async () => {
    const folder = await smallBinder({[ledger]: 'leaves: [\n'});
    await swatchleaf(['build', '--only', 'Q-01', folder]);
    const {code, out, err} = await swatchleaf(['printed', folder]);
    expect({code, out}).toEqual({code: 1, out: 'Nothing was recorded: the ledger must be mended first.\n'});
    expect(err).toMatch(/content\/print-ledger\.yaml:\d+:\d+ error yaml-syntax/);
    expect(await readFile(path.join(folder, ledger), 'utf8')).toBe('leaves: [\n');
    await appendFile(path.join(folder, 'build/only.pdf'), 'x');
    await writeFile(path.join(folder, ledger), '');
    expect((await swatchleaf(['printed', folder])).err).toMatch(
      /`build\/only\.pdf` is not as `build` made it/,
    );
  });
});
