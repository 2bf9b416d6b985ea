import {readdirSync, readFileSync} from 'node:fs';
import {expect, test} from 'vitest';
import type {Step, WorkStep} from '../../../src/knitting/rows/row-syntax.ts';
import {prove} from './prove.ts';

const content = new URL('../../../content/', import.meta.url);
const blocks = readdirSync(content, {recursive: true, encoding: 'utf8'})
  .filter((file) => file.endsWith('.md'))
  .flatMap((file) => {
    const text = readFileSync(new URL(file, content), 'utf8');
    return [...text.matchAll(/~~~rows\n([\s\S]*?)~~~/g)].map(([, rows = '']) => ({file, rows}));
  });

/** Every stitch or run of stitches that the rows name. */
function stitchesIn(text: string): readonly WorkStep[] {
  const leaves = (steps: readonly Step[]): readonly WorkStep[] =>
    steps.flatMap((step) => ('steps' in step ? leaves(step.steps) : step.kind === 'work' ? [step] : []));
  return prove(text).pattern.entries.flatMap((entry) => (entry.kind === 'row' ? leaves(entry.steps) : []));
}

test('misspelling any one step of any pattern of the example is one finding, at that word', () => {
  let broken = 0;
  for (const {file, rows} of blocks) {
    expect(prove(rows).found, file).toEqual([]);
    for (const {span} of stitchesIn(rows)) {
      const text = `${rows.slice(0, span.start)}q${rows.slice(span.start)}`;
      const {problems, proved} = prove(text);
      const found = [...problems, ...proved.problems];
      expect(
        found.map((each) => each.span.start),
        `${file}: q${rows.slice(span.start, span.end)}`,
      ).toEqual([span.start]);
      broken += 1;
    }
  }
  expect(broken).toBeGreaterThan(500);
});

test('one stitch too many in any one step is one finding, or none where the rows still come out', () => {
  let found = 0;
  for (const {file, rows} of blocks) {
    for (const {extent, span} of stitchesIn(rows)) {
      if (extent.kind !== 'times' || extent.count.span.start < span.start) continue;
      const {start, end} = extent.count.span;
      if (!/^\d+$/.test(rows.slice(start, end))) continue;
      const text = `${rows.slice(0, start)}${Number(rows.slice(start, end)) + 1}${rows.slice(end)}`;
      const broken = prove(text);
      expect(broken.found.length, `${file}: ${rows.slice(span.start, span.end)}`).toBeLessThanOrEqual(1);
      found += broken.found.length;
    }
  }
  // Seed stitch with one more stitch is another pattern that comes out: counting cannot find it.
  expect(found).toBeGreaterThan(200);
});
