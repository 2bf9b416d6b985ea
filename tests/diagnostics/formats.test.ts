import fc from 'fast-check';
import {expect, test} from 'vitest';
import type {Finding} from '../../src/diagnostics/finding.ts';
import {formatJson} from '../../src/diagnostics/format-json.ts';
import {formatSarif} from '../../src/diagnostics/format-sarif.ts';
import {formatText} from '../../src/diagnostics/format-text.ts';
import {sortFindings} from '../../src/diagnostics/sort-findings.ts';

const wordLimit: Finding = {
  rule: 'word-limit',
  severity: 'error',
  file: 'content/reviews/the shaped stitch #1.md',
  place: {line: 4, column: 1, endLine: 4, endColumn: 6},
  message: '`B-01` has `548` words; the syllabus allows at most `500`',
  hint: 'Take out 48 words.',
  related: [
    {
      file: 'content/syllabus.yaml',
      place: {line: 2, column: 3, endLine: 2, endColumn: 5},
      message: 'the limit is set here',
    },
  ],
};

test('text: place, fact, line, remedy, related place, counts', () => {
  const text = formatText([wordLimit], () => '---\na: 1\n---\nWords words\n');
  expect(text).toBe(`content/reviews/the shaped stitch #1.md:4:1 error word-limit
  \`B-01\` has \`548\` words; the syllabus allows at most \`500\`
    4 | Words words
      | ^^^^^
  → Take out 48 words.
  see content/syllabus.yaml:2:3: the limit is set here

1 error
`);
});

test('text of no findings says so', () => {
  expect(formatText([], () => null)).toBe('nothing found\n');
});

test('JSON: one document with a schema version, the counts and the fields of a finding', () => {
  const document = JSON.parse(formatJson([wordLimit]));
  expect(document).toEqual({
    schemaVersion: 1,
    counts: {error: 1, warning: 0, info: 0},
    findings: [
      {
        rule: 'word-limit',
        severity: 'error',
        file: 'content/reviews/the shaped stitch #1.md',
        line: 4,
        column: 1,
        endLine: 4,
        endColumn: 6,
        message: wordLimit.message,
        hint: wordLimit.hint,
        related: [
          {
            file: 'content/syllabus.yaml',
            line: 2,
            column: 3,
            endLine: 2,
            endColumn: 5,
            message: 'the limit is set here',
          },
        ],
      },
    ],
  });
});

// SARIF 2.1.0 (OASIS, 27 March 2020): §3.13 log, §3.27 result, §3.30 region, §3.4.4 relative URIs.
test('SARIF: levels, regions counted from 1, relative and percent-encoded URIs, rules by index', () => {
  const log = JSON.parse(
    formatSarif(
      [wordLimit],
      [
        {id: 'a', summary: 'b'},
        {id: 'word-limit', summary: 'law'},
      ],
      '1.2.3',
    ),
  );
  expect(log.version).toBe('2.1.0');
  const [run] = log.runs;
  expect(run.columnKind).toBe('utf16CodeUnits');
  const [result] = run.results;
  expect(run.tool.driver.rules[result.ruleIndex].id).toBe(result.ruleId);
  expect(result.level).toBe('error');
  const {artifactLocation, region} = result.locations[0].physicalLocation;
  expect(artifactLocation.uri).toBe('content/reviews/the%20shaped%20stitch%20%231.md');
  expect(run.originalUriBaseIds).toHaveProperty(artifactLocation.uriBaseId);
  expect(region).toEqual({startLine: 4, startColumn: 1, endLine: 4, endColumn: 6});
  expect(result.relatedLocations[0].physicalLocation.region.startLine).toBe(2);
});

test('sorting puts findings in the order of reading, whatever order they came in, and drops repeats', () => {
  const finding = (file: string, line: number, column: number, rule: string): Finding => ({
    ...wordLimit,
    file,
    rule,
    place: {line, column, endLine: line, endColumn: column},
  });
  const inOrder = [
    finding('a', 1, 1, 'x'),
    finding('a', 1, 2, 'a'),
    finding('a', 1, 2, 'b'),
    finding('a', 10, 1, 'x'),
    finding('b', 2, 1, 'x'),
  ];
  fc.assert(
    fc.property(fc.shuffledSubarray([...inOrder, ...inOrder], {minLength: 10}), (shuffled) => {
      expect(sortFindings(shuffled)).toEqual(inOrder);
    }),
  );
});

test('a hostile file name or message cannot steer the terminal', () => {
  const text = formatText([{...wordLimit, file: 'a\u001b[2Jb\n.md', message: 'x\u202ey'}], () => null);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the test is about control characters
  expect(text).not.toMatch(/[\u001b\u202e]/);
  expect(text.split('\n')[0]).toBe('a\\u{1b}[2Jb .md:4:1 error word-limit');
});
