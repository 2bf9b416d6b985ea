import {expect, test} from 'vitest';
import {monthNumber, readDate} from '../../../src/references/import/read-date.ts';

// How dates are written: ISO 8601-2:2019 (`1910~` about, `1910?` uncertain, `1910%` both, `2010/2012` from and to,
// `2010/..` with an open end), the RIS format (`YYYY/MM/DD/other words`), the CSL data schema 1.0.2 (`date-parts` of one
// or two dates, `circa`, `season`, `raw`, `literal`), and AACR2 1.4F (`c1910` the date of copyright, `[1910]` and
// `[1910?]` supplied by the cataloguer). Each value is read off the text by hand.

const about = (...parts: readonly (readonly number[])[]) => ({'date-parts': parts, circa: true});
const exactly = (...parts: readonly (readonly number[])[]) => ({'date-parts': parts});

test.each([
  ['2011', exactly([2011])],
  [' 2011 ', exactly([2011])],
  ['987', exactly([987])],
  ['-50', exactly([-50])],
  ['9999', exactly([9999])],
  ['2011-05', exactly([2011, 5])],
  ['2011-01-01', exactly([2011, 1, 1])],
  ['2011-12-31', exactly([2011, 12, 31])],
  ['2011/05/17', exactly([2011, 5, 17])],
  ['2011/05/17/', exactly([2011, 5, 17])],
  ['2011///', exactly([2011])],
  ['2011-05-17T08:30:00Z', exactly([2011, 5, 17])],
  ['2010/2012', exactly([2010], [2012])],
  ['2010-05/2012-06-07', exactly([2010, 5], [2012, 6, 7])],
  ['2010-05-06/2012-06', exactly([2010, 5, 6], [2012, 6])],
])('`%s` is read whole', (written, date) => {
  expect(readDate(written)).toEqual({date, guessedFrom: null});
});

test.each([
  ['1910~', about([1910])],
  ['1910?', about([1910])],
  ['1910%', about([1910])],
  ['1910?.', exactly([1910])],
  ['~1910', about([1910])],
  ['c1910', about([1910])],
  ['c. 1910', about([1910])],
  ['c.1910', about([1910])],
  ['c 1910', about([1910])],
  ['ca. 1910', about([1910])],
  ['ca 1910', about([1910])],
  ['Circa  1910', about([1910])],
  ['[1910]', about([1910])],
  ['[1910?]', about([1910])],
  ['[c1910]', about([1910])],
  ['[ca. 1910]', about([1910])],
  ['1910]', about([1910])],
  ['\u00a9 2011', exactly([2011])],
  ['\u00a92011', exactly([2011])],
  ['2011.', exactly([2011])],
  ['2010-2012', exactly([2010], [2012])],
  ['2010 \u2013 2012', exactly([2010], [2012])],
  ['2010--2012', exactly([2010], [2012])],
  ['2010/..', exactly([2010])],
  ['2010-', exactly([2010])],
  ['17 May 2011', exactly([2011, 5, 17])],
  ['May 17, 2011', exactly([2011, 5, 17])],
  ['17th of May 2011', exactly([2011, 5, 17])],
  ['1st May 2011', exactly([2011, 5, 1])],
  ['Sept. 2011', exactly([2011, 9])],
  ['Autumn 2011', exactly([2011])],
  ['fall 2011', exactly([2011])],
  ['2011/05/17/Spring issue', exactly([2011, 5, 17])],
  ['2011-13', exactly([2011])],
  ['2011-00', exactly([2011])],
  ['2011-05-32', exactly([2011, 5])],
  ['2011-05-00', exactly([2011, 5])],
])('`%s` is read, and what was written is kept beside it', (written, date) => {
  expect(readDate(written)).toEqual({date, guessedFrom: written});
});

test.each([
  [''],
  ['no date'],
  ['in press'],
  ['12345'],
  ['Tuesday 2011'],
  ['after May 2011'],
  ['17 May 11'],
  ['May 12011'],
  ['May 2011 June 2012 July 2013'],
  [null],
  [undefined],
  [[]],
  [`${'2011/05/17/'.padEnd(101, 'x')}`],
])('%o is no date', (written) => {
  expect(readDate(written)).toBeNull();
});

test('a hundred characters may hold a date', () => {
  expect(readDate('2011/05/17/'.padEnd(100, 'x'))?.date).toEqual(exactly([2011, 5, 17]));
});

test('a number is a year', () => {
  expect(readDate(2011)).toEqual({date: exactly([2011]), guessedFrom: null});
});

test.each([
  [{'date-parts': [[2011, 5, 17]]}, exactly([2011, 5, 17])],
  [{'date-parts': [['2011', ' 5 ']]}, exactly([2011, 5])],
  [{'date-parts': [[2010], [2012, 6]]}, exactly([2010], [2012, 6])],
  [{'date-parts': [[1910]], circa: true}, about([1910])],
  [{'date-parts': [[1910]], circa: 1}, about([1910])],
  [{'date-parts': [[1910]], circa: false}, exactly([1910])],
  [{'date-parts': [[1910]], circa: 0}, exactly([1910])],
  [{raw: ' 2011-05 '}, exactly([2011, 5])],
  [{literal: ' 2011 '}, exactly([2011])],
  [{raw: '2012', literal: '2011'}, exactly([2012])],
])('of CSL-JSON %j is read whole', (value, date) => {
  expect(readDate(value)).toEqual({date, guessedFrom: null});
});

test.each([
  [{'date-parts': [[2011, 13]]}, exactly([2011])],
  [{'date-parts': [[2011, 5, 32]]}, exactly([2011, 5])],
  [{'date-parts': [[2011, null, 7]]}, exactly([2011])],
  [{'date-parts': [[2011], [2012], [2013]]}, exactly([2011], [2012])],
  [{'date-parts': [[2010], []]}, exactly([2010])],
  [{'date-parts': [[2011]], season: 2}, exactly([2011])],
])('of CSL-JSON %j a part is lost, and all of it is kept beside', (value, date) => {
  expect(readDate(value)).toEqual({date, guessedFrom: JSON.stringify(value['date-parts'])});
});

test.each([
  [{'date-parts': []}],
  [{'date-parts': [[]]}],
  [{'date-parts': [[], [2012]]}],
  [{'date-parts': [['spring 2011']]}],
  [{'date-parts': [[12345]]}],
  [{'date-parts': ['2011']}],
  [{}],
])('of CSL-JSON %j no year can be read', (value) => {
  expect(readDate(value)).toBeNull();
});

test.each([
  ['January', 1],
  ['jan', 1],
  ['Sept', 9],
  ['sep', 9],
  ['december', 12],
  ['de', 0],
  ['mayor', 0],
  ['septuple', 0],
])('`%s` is month %i', (word, number) => {
  expect(monthNumber(word)).toBe(number);
});
