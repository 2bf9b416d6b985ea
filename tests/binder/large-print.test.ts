import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {expect, test} from 'vitest';
import {type DrawnText, drawnOnPages} from '../print/drawn-on-page.ts';
import {smallBinder, swatchleaf} from '../support/run-cli.ts';

const base = 'tests/rules/base/content';
const answer = (await readFile(`${base}/questions/q-01.md`, 'utf8')).replace(/\s+/g, ' ');

/** What stands on the sheets of the small binder, without its tabs, which are read from the side. */
async function printedTexts(settings: string): Promise<readonly DrawnText[]> {
  const binder = await readFile(`${base}/binder.yaml`, 'utf8');
  const folder = await smallBinder({'content/binder.yaml': `${binder}${settings}`});
  const {err} = await swatchleaf(['build', folder]);
  expect(err).not.toMatch(/error|warning/);
  const pages = await drawnOnPages(await readFile(path.join(folder, 'build/binder.pdf')));
  return pages.flatMap(({texts}) => texts).filter(({degrees}) => degrees === 0);
}

/** Sizes of the lines of the author's own sentences, in points. */
function sizesOfProse(texts: readonly DrawnText[]): readonly number[] {
  const lines = texts.filter(({text}) => text.length > 30 && answer.includes(text.trim()));
  expect(lines.length).toBeGreaterThan(1);
  return lines.map(({size}) => size);
}

test('the theme for tired eyes prints text in 14 pt, and the smallest words in drawings in 10 pt', {
  timeout: 240_000,
}, async () => {
  const usual = await printedTexts('');
  for (const size of sizesOfProse(usual)) expect(size).toBeCloseTo(10.5, 1);
  // 14 pt is where large print is commonly said to begin (common practice, no source).
  const large = await printedTexts('theme: large-print\n');
  for (const size of sizesOfProse(large)) expect(size).toBeGreaterThanOrEqual(14);
  expect(Math.min(...large.map(({size}) => size))).toBeGreaterThanOrEqual(10);
});
