import fc from 'fast-check';
import {expect, test} from 'vitest';
import {parseCitations} from '../../src/references/citation.ts';
import {formatCitation} from './format-citation.ts';

const texts = fc.oneof(
  fc.string({unit: 'binary'}),
  fc.string({unit: fc.constantFrom(...'@@@;;,,.:- -pcht§¶[]aé1٣7–xivф\n\\\u{1f9f6}')}),
  fc
    .array(
      fc.constantFrom(
        '@a',
        '-@b',
        ', ',
        'p. ',
        'pp. ',
        '5',
        '-',
        '7',
        '; ',
        'fig.',
        'IV',
        '3:20',
        ' see ',
        '[',
        ']',
      ),
    )
    .map((parts) => parts.join('')),
);

test('any text gives citations or problems, never an exception', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const result = parseCitations(text);
      expect(result.ok ? result.value.length : result.problems.length).toBeGreaterThan(0);
    }),
    {numRuns: 2000},
  );
});

test('a key span shows the key; citations follow one another inside the text; a problem lies inside the text', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const result = parseCitations(text);
      let end = 0;
      if (!result.ok) {
        for (const {span} of result.problems) {
          expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(true);
        }
        return;
      }
      for (const {span, key, keySpan} of result.value) {
        expect(text.slice(keySpan.start, keySpan.end)).toBe(key);
        expect(end <= span.start && span.start < keySpan.start && keySpan.end <= span.end).toBe(true);
        expect(text.slice(end, span.start)).toMatch(/^[\s;]*$/);
        end = span.end;
      }
      expect(text.slice(end).trim()).toBe('');
    }),
    {numRuns: 2000},
  );
});

const page = fc.oneof(
  fc.integer({min: 1, max: 9999}).map(String),
  fc.tuple(fc.integer({min: 1, max: 99}), fc.integer({min: 100, max: 999})).map((ends) => ends.join('–')),
  fc
    .array(fc.integer({min: 1, max: 999}).map(String), {minLength: 2, maxLength: 4})
    .map((list) => list.join(', ')),
  fc.constantFrom('iv', 'xii', 'IX', 'ii–vi', '2a', '3.1', '57ff.'),
);
const time = fc
  .tuple(fc.integer({min: 0, max: 59}), fc.integer({min: 0, max: 59}))
  .map(([minutes, seconds]) => `${minutes}:${String(seconds).padStart(2, '0')}`);
const locator = fc.oneof(
  fc.constant(null),
  fc.record({
    label: fc.constantFrom(
      'page',
      'chapter',
      'figure',
      'volume',
      'issue',
      'section',
      'plate',
      'table',
      'paragraph',
    ),
    value: page,
  }),
  fc.record({label: fc.constant('time' as const), value: time}),
);
const citation = fc.record({
  prefix: fc.constantFrom('', 'see', 'see also', 'as in', 'cf.'),
  key: fc.stringMatching(/^[a-z]{3,8}([-:.]?[a-z0-9]){0,4}$/),
  locator,
  suffix: fc.constantFrom('', ', and onward', '(my emphasis)', ', with a warning', '(in passing)'),
  suppressAuthor: fc.boolean(),
});

// Words after a list without punctuation are not tried: `p. 57, 3 swatches` has one page.
test('reading what is written from a citation gives the citation: parse(format(c)) = c', () => {
  fc.assert(
    fc.property(fc.array(citation, {minLength: 1, maxLength: 4}), (citations) => {
      const result = parseCitations(citations.map(formatCitation).join('; '));
      expect(result.ok && result.value.map(({span: _, keySpan: __, ...rest}) => rest)).toEqual(citations);
    }),
    {numRuns: 1000},
  );
});
