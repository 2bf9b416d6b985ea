import {expect, test} from 'vitest';
import {rememberedCounts} from '../../src/commands/remembered-counts.ts';
import {pdfOf} from '../print/pdf-of.ts';

function labelled(...labels: readonly string[]): Uint8Array {
  const text = (label: string) =>
    `<FEFF${Buffer.from(label, 'utf16le').swap16().toString('hex').toUpperCase()}>`;
  const nums = labels.map((label, page) => `${page} <</P ${text(label)}>>`);
  return Buffer.from(pdfOf(`<</Type /Catalog /PageLabels <</Nums [${nums.join(' ')}]>>>>`), 'latin1');
}
const sheet = (label: string, blank = false) => ({anchor: `a-${label}`, label, title: '', blank});

test('the pages of each sheet, blank backs left out', () => {
  const pdf = labelled('Title · 1 of 1', 'Title · back', 'S-07 · 1 of 2', 'S-07 · 2 of 2', 'S-99 · 1 of 1');
  const counts = rememberedCounts(pdf, [sheet('Title'), sheet('Title', true), sheet('S-07')]);
  expect([...(counts ?? [])]).toEqual([
    ['a-Title', 1],
    ['a-S-07', 2],
  ]);
});

test('one page is the guess for a sheet that was not there', () => {
  const counts = rememberedCounts(labelled('S-07 · 1 of 2', 'S-07 · 2 of 2'), [
    sheet('S-07 cover'),
    sheet('S-07'),
  ]);
  expect([...(counts ?? [])]).toEqual([
    ['a-S-07 cover', 1],
    ['a-S-07', 2],
  ]);
});

test.each<[string, Uint8Array]>([
  ['it holds none of the sheets', labelled('Title · 1 of 1')],
  ['it is no PDF', Buffer.from('the last good one')],
  ['it is cut short', labelled('S-07 · 1 of 1').slice(0, -12)],
  ['it is empty', new Uint8Array()],
])('nothing is remembered when %s', (_, pdf) => {
  expect(rememberedCounts(pdf, [sheet('S-07'), sheet('Q-03')])).toBeNull();
});
