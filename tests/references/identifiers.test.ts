import fc from 'fast-check';
import {expect, test} from 'vitest';
import {readDoi, readIsbn, readIssn} from '../../src/references/identifiers.ts';

const readers = {isbn: readIsbn, issn: readIssn, doi: readDoi};
type Kind = keyof typeof readers;

const good: readonly (readonly [Kind, text: string, value: string])[] = [
  ['isbn', '9780306406157', '9780306406157'],
  ['isbn', '978-0-306-40615-7', '9780306406157'],
  ['isbn', '978 0 306 40615 7', '9780306406157'],
  ['isbn', 'ISBN 978-0-306-40615-7', '9780306406157'],
  ['isbn', 'ISBN-13: 978-0-306-40615-7', '9780306406157'],
  ['isbn', 'ISBN 13: 978-0-306-40615-7', '9780306406157'],
  ['isbn', 'ISBN-10 0-306-40615-2', '0306406152'],
  ['isbn', 'isbn 080442957x', '080442957X'],
  ['isbn', '  0306406152 ', '0306406152'],
  ['issn', '0317-8471', '0317-8471'],
  ['issn', '03178471', '0317-8471'],
  ['issn', 'ISSN 0317-8471', '0317-8471'],
  ['issn', 'eISSN: 0317-8471', '0317-8471'],
  ['doi', '10.1386/mms.5.3.293_2', '10.1386/mms.5.3.293_2'],
  ['doi', 'doi:10.1386/mms.5.3.293_2', '10.1386/mms.5.3.293_2'],
  ['doi', 'https://doi.org/10.1386/mms.5.3.293_2', '10.1386/mms.5.3.293_2'],
  ['doi', 'http://dx.doi.org/10.1386/mms.5.3.293_2', '10.1386/mms.5.3.293_2'],
  ['doi', '10.1000.10/a(b);c/d', '10.1000.10/a(b);c/d'],
];

test.each(good)('%s %s', (kind, text, value) => {
  expect(readers[kind](text)).toEqual({ok: true, value});
});

const bad: readonly (readonly [Kind, text: string, at: string, says: string])[] = [
  ['isbn', '978-0-306-40615-3', '3', 'is `3`; its other digits ask for `7`'],
  ['isbn', 'ISBN 0-306-40615-X', 'X', 'is `X`; its other digits ask for `2`'],
  ['isbn', '0-8044-2957-1', '1', 'ask for `X`'],
  ['isbn', '978-0-306-40615', '978-0-306-40615', 'it has 12 digits'],
  ['isbn', 'X-306-40615-2', 'X-306-40615-2', 'does not have the form of an ISBN'],
  ['isbn', '977-0-306-40615-7', '977-0-306-40615-7', 'does not begin with `978` or `979`'],
  ['isbn', '978--0-306-40615-7', '978--0-306-40615-7', 'does not have the form'],
  ['isbn', 'not yet known', 'not yet known', 'it has 0 digits'],
  ['isbn', '', '', 'it has 0 digits'],
  ['issn', 'ISSN 0317-8472', '2', 'is `2`; its other digits ask for `1`'],
  ['issn', '03178-471', '03178-471', 'does not have the form of an ISSN'],
  ['doi', '10.1386/mms.5.3.293_2.', '10.1386/mms.5.3.293_2.', 'without a full stop at the end'],
  ['doi', '10x1386/mms', '10x1386/mms', 'does not have the form of a DOI'],
  ['doi', 'https://doi.org/11.1386/mms', 'https://doi.org/11.1386/mms', 'does not have the form'],
];

test.each(bad)('%s %s is reported at its place', (kind, text, at, says) => {
  const result = readers[kind](text);
  const [problem, ...more] = result.ok ? [] : result.problems;
  expect(more).toEqual([]);
  expect(text.slice(problem?.span.start, problem?.span.end)).toBe(at);
  expect(`${problem?.message}. ${problem?.hint}`).toContain(says);
});

const digits = (count: number) => fc.stringMatching(new RegExp(`^\\d{${count}}$`));
const rightIsbn13 = fc
  .tuple(fc.constantFrom('978', '979'), digits(9))
  .map(([prefix, rest]) => rightOf(prefix + rest));
const rightIsbn10 = digits(9).map(rightOf);

/** The one of the eleven possible last digits that is read without a problem. */
function rightOf(start: string): string {
  const right = [...'0123456789X'].filter((last) => readIsbn(start + last).ok);
  expect(right).toHaveLength(1);
  return start + right[0];
}

test('of all last digits exactly one is right, and each wrong one is told the right one', () => {
  fc.assert(
    fc.property(fc.oneof(rightIsbn13, rightIsbn10), fc.constantFrom(...'0123456789'), (isbn, last) => {
      fc.pre(!isbn.endsWith(last));
      const result = readIsbn(isbn.slice(0, -1) + last);
      expect(!result.ok && result.problems[0]?.message).toContain(`ask for \`${isbn.at(-1)}\``);
    }),
  );
});

test('the word ISBN before a number changes nothing', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        rightIsbn13,
        rightIsbn10,
        digits(8).map((rest) => rightOf(`1${rest}`)),
      ),
      fc.constantFrom('ISBN ', 'ISBN: ', 'isbn', 'ISBN-13: ', 'ISBN-10 '),
      (isbn, word) => {
        expect(readIsbn(word + isbn)).toEqual({ok: true, value: isbn});
      },
    ),
  );
});

test('no single wrong digit goes unseen', () => {
  fc.assert(
    fc.property(
      fc.oneof(rightIsbn13, rightIsbn10),
      fc.nat({max: 8}),
      fc.integer({min: 1, max: 9}),
      (isbn, fromEnd, add) => {
        const at = isbn.length - 2 - fromEnd;
        fc.pre(at >= (isbn.length === 13 ? 3 : 0));
        const wrong = String((Number(isbn[at]) + add) % 10);
        expect(readIsbn(isbn.slice(0, at) + wrong + isbn.slice(at + 1)).ok).toBe(false);
      },
    ),
  );
});

test('two neighbours of an ISBN-10 that changed places never go unseen', () => {
  fc.assert(
    fc.property(rightIsbn10, fc.nat({max: 7}), (isbn, at) => {
      fc.pre(isbn[at] !== isbn[at + 1]);
      const swapped = isbn.slice(0, at) + isbn[at + 1] + isbn[at] + isbn.slice(at + 2);
      expect(readIsbn(swapped).ok).toBe(false);
    }),
  );
});

test('any text gives a value or problems inside the text', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.string({unit: fc.constantFrom(...'ISBN 10-39X:./doi')})), (text) => {
      for (const read of Object.values(readers)) {
        const result = read(text);
        for (const {span} of result.ok ? [] : result.problems) {
          expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(true);
        }
      }
    }),
    {numRuns: 1000},
  );
});
