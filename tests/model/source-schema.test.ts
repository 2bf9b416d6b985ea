import {describe, expect, test} from 'vitest';
import {sourceSchema} from '../../src/model/schema/source.ts';

const read = (fields: object) => sourceSchema.parse({id: 'a', type: 'book', ...fields});

describe('a library entry', () => {
  // CSL-JSON dates and names: CSL 1.0.2 specification, https://docs.citationstyles.org/en/stable/specification.html
  test.each([
    [1843, {'date-parts': [[1843]]}],
    ['1843', {'date-parts': [[1843]]}],
    ['2011-05', {'date-parts': [[2011, 5]]}],
    ['2011-05-07', {'date-parts': [[2011, 5, 7]]}],
    ['c. 1910', {'date-parts': [[1910]], circa: true}],
    [{'date-parts': [[2011, '5']]}, {'date-parts': [[2011, 5]]}],
    [
      {'date-parts': [[2011], [2012]], circa: 1},
      {'date-parts': [[2011], [2012]], circa: true},
    ],
  ])('issued %j', (issued, date) => {
    expect(read({issued}).issued).toEqual(date);
  });

  test.each(['12 May', '2011-13', '2011-05-32', '', 'n.d.'])('not issued %j', (issued) => {
    expect(sourceSchema.safeParse({id: 'a', type: 'book', issued}).success).toBe(false);
  });

  test.each([
    ['Ashdown, Ruth', [{family: 'Ashdown', given: 'Ruth'}]],
    ['Guild of Knitters', [{literal: 'Guild of Knitters'}]],
    [
      ['Ashdown, R.', {family: 'Roe', 'non-dropping-particle': 'van'}],
      [
        {family: 'Ashdown', given: 'R.'},
        {family: 'Roe', 'non-dropping-particle': 'van'},
      ],
    ],
  ])('author %j', (author, names) => {
    expect(read({author}).author).toEqual(names);
  });

  test('numbers stand for text, and an ISBN keeps its zeros', () => {
    expect(read({volume: 3, page: 57, title: 1843, ISBN: 306406152})).toMatchObject({
      volume: '3',
      page: '57',
      title: '1843',
      ISBN: '0306406152',
    });
    expect(read({ISBN: 9780306406157}).ISBN).toBe('9780306406157');
  });
});
