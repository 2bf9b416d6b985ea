import fc from 'fast-check';
import {parse} from 'isbn3';
import {expect, test} from 'vitest';
import {readDoi, readIsbn, readIssn} from '../../src/references/identifiers.ts';
import published from './data/identifiers.json' with {type: 'json'};

// Each number's source stands beside it in data/identifiers.json.

test.each([...published.isbn13.valid, ...published.isbn10.valid])('ISBN $v ($where)', ({v}) => {
  expect(readIsbn(v)).toEqual({ok: true, value: v.replaceAll('-', '')});
});

test.each([...published.isbn13.invalid, ...published.isbn10.invalid])('ISBN %s is refused', (text) => {
  expect(readIsbn(text).ok).toBe(false);
});

test('the worked examples of both rules end in their check digits', () => {
  const {worked} = published.isbn13;
  expect(readIsbn(worked.isbn).ok && worked.isbn.endsWith(String(worked.check))).toBe(true);
  expect(readIsbn(published.isbn10.worked.isbn).ok).toBe(true);
});

test.each(published.published_formula_errors)('the formula of $where is not followed', () => {
  // It gives 3 for 978030640615, where the standard gives 7.
  const result = readIsbn('978-0-306-40615-3');
  expect(!result.ok && result.problems[0]?.message).toContain('ask for `7`');
});

test.each(published.issn.valid)('ISSN $v ($where)', ({v}) => {
  expect(readIssn(v)).toEqual({ok: true, value: v});
});

test.each(published.issn.invalid.map((entry) => entry.split(' ')[0] ?? ''))('ISSN %s is refused', (text) => {
  expect(readIssn(text).ok).toBe(false);
});

test.each(published.doi.valid)('DOI %s', (text) => {
  expect(readDoi(text)).toEqual({ok: true, value: text});
});

test.each([...published.doi.invalid, '10x1128/AEM.02591-07', '10.1128/AEM.02591-07.'])(
  'DOI %s is refused',
  (text) => {
    expect(readDoi(text).ok).toBe(false);
  },
);

test('isbn3, an independent library, agrees on the check digit of every ISBN of a group that it knows', () => {
  const start = fc.oneof(
    fc.stringMatching(/^[01][2-5]\d{7}$/),
    fc.stringMatching(/^978[01][2-5]\d{7}$/),
    fc.stringMatching(/^978[237]\d{8}$/),
  );
  let compared = 0;
  fc.assert(
    fc.property(start, (digits) => {
      const endings = [...'0123456789X'];
      const theirs = endings.filter((last) => parse(digits + last)?.isValid);
      fc.pre(theirs.length > 0);
      compared += 1;
      expect(endings.filter((last) => readIsbn(digits + last).ok)).toEqual(theirs);
    }),
    {numRuns: 500},
  );
  expect(compared).toBe(500);
});
