import {readdirSync, readFileSync} from 'node:fs';
import {expect, test} from 'vitest';
import {nameSlips} from '../../../src/knitting/rows/name-slips.ts';
import type {Step} from '../../../src/knitting/rows/row-syntax.ts';
import type {Span} from '../../../src/support/result.ts';
import {prove} from './prove.ts';

// Every rows block of the worked example, broken in one step after the other.
const content = new URL('../../../content/', import.meta.url);
const blocks = readdirSync(content, {recursive: true, encoding: 'utf8'})
  .filter((file) => file.endsWith('.md'))
  .flatMap((file) => {
    const text = readFileSync(new URL(file, content), 'utf8');
    return [...text.matchAll(/~~~rows\n([\s\S]*?)~~~/g)].map(([, rows = '']) => ({file, rows}));
  });

type Single = Extract<Step, {kind: 'work' | 'bind off'}>;

/** Every stitch or run of stitches that the rows name. */
function stitchesIn(text: string): readonly Single[] {
  const leaves = (steps: readonly Step[]): readonly Single[] =>
    steps.flatMap((step) => {
      if ('steps' in step) return leaves(step.steps);
      return step.kind === 'work' || step.kind === 'bind off' ? [step] : [];
    });
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

/** The text with one stitch more in the step: `k3` as `k4`, `to last 3 sts` as `to last 4 sts`, `yo` as `yo twice`. */
function withOneMore(rows: string, {extent, span}: Single): string | null {
  if (extent.kind !== 'times' && extent.kind !== 'to last') return null;
  const {start, end} = extent.count.span;
  const number = /^\d+/.exec(rows.slice(start, end))?.[0];
  if (number === undefined) return `${rows.slice(0, span.end)} twice${rows.slice(span.end)}`;
  return `${rows.slice(0, start)}${Number(number) + 1}${rows.slice(start + number.length)}`;
}

// A change that leaves the counts right, `k5, k to end` for `k4, k to end` or k for p, cannot be found by counting.
test('one stitch too many in any one step is at most one finding, at the word where the counts can tell', () => {
  const tally = {word: 0, row: 0, later: 0, 'not at all': 0};
  for (const {file, rows} of blocks) {
    const {pattern} = prove(rows);
    const rowOf = (place: Span) => pattern.entries.findLastIndex(({span}) => span.start <= place.start);
    const steps = stitchesIn(rows);
    for (const step of steps) {
      const text = withOneMore(rows, step);
      if (text === null) continue;
      const broken = prove(text);
      const problems = [...broken.problems, ...nameSlips(broken.pattern, broken.proved.problems)];
      const word = rows.slice(step.span.start, step.span.end);
      expect(problems.length, `${file}: ${word}`).toBeLessThanOrEqual(1);
      const [problem] = problems;
      const isNamed = problem?.hint.includes('would make everything come out');
      if (isNamed) expect(problem?.span.start, `${file}: ${word}`).toBe(step.span.start);
      if (!problem) tally['not at all'] += 1;
      else if (problem.span.start === step.span.start) tally.word += 1;
      else if (rowOf(problem.span) === rowOf(step.span)) tally.row += 1;
      else tally.later += 1;
    }
  }
  const found = tally.word + tally.row + tally.later;
  expect(found, JSON.stringify(tally)).toBeGreaterThan(400);
  expect(tally.word / found, JSON.stringify(tally)).toBeGreaterThan(0.8);
  expect(tally.later / found, JSON.stringify(tally)).toBeLessThan(0.05);
});
