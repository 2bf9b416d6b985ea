import {expect, test} from 'vitest';
import type {Source} from '../../src/references/source.ts';
import {authorLabel, shortTitle, sourceLabel} from '../../src/references/source-label.ts';

const issued = {'date-parts': [[2016]]};
const labels: readonly (readonly [label: string, author: string | null, fields: Partial<Source>])[] = [
  ['Ashdown 2016', 'Ashdown', {author: [{family: 'Ashdown', given: 'C.'}], issued}],
  ['Lunde and Otter 2016', 'Lunde and Otter', {author: [{family: 'Lunde'}, {family: 'Otter'}], issued}],
  [
    'Lunde et al. 2016',
    'Lunde et al.',
    {author: [{family: 'Lunde'}, {family: 'Otter'}, {family: 'Pike'}], issued},
  ],
  ['Fellgate Guild 2016', 'Fellgate Guild', {author: [{literal: 'Fellgate Guild'}], issued}],
  [
    'van der Berg 2016',
    'van der Berg',
    {author: [{family: 'Berg', 'non-dropping-particle': 'van der'}], issued},
  ],
  ['Holt 2016', 'Holt', {editor: [{family: 'Holt'}], issued}],
  ['Lunde 2016', 'Lunde', {director: [{family: 'Lunde'}], editor: [{family: 'Holt'}], issued}],
  ['Holt 2016', 'Holt', {author: [{}], editor: [{family: 'Holt'}], issued}],
  ['Ashdown n.d.', 'Ashdown', {author: [{family: 'Ashdown'}]}],
  ['Comforts, 2016', null, {title: 'Comforts', issued}],
  ['The knitted edge, n.d.', null, {title: 'The knitted edge: selvedges in plain and fancy work'}],
  [
    'A very long title about the many ways…, n.d.',
    null,
    {title: 'A very long title about the many ways to bind off'},
  ],
  ['the-key, n.d.', null, {}],
  ['the-key, n.d.', null, {title: '  '}],
];

test.each(labels)('%s', (label, author, fields) => {
  const source: Source = {id: 'the-key', type: 'book', ...fields};
  expect(sourceLabel(source)).toBe(label);
  expect(authorLabel(source)).toBe(author);
});

test.each([
  ['Gauge: a study', 'Gauge'],
  ['Gauge', null],
  ['Ratio 1:2', null],
  ['Gauge: a study: part two', 'Gauge'],
  ['', null],
])('the short form of “%s” is %s', (title, short) => {
  expect(shortTitle(title)).toBe(short);
});
