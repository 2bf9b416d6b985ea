import {describe, expect, test} from 'vitest';
import {parseItem} from '../../src/markdown/parse-item.ts';

function words(markdown: string): number {
  return parseItem('a.md', `---\ntitle: three words here\n---\n${markdown}`).body.words;
}

/*
 * The counts are what a word processor shows for the printed text: runs between white space. Common practice, no source;
 * checked by hand.
 */
describe('words', () => {
  test.each([
    ['', 0],
    ['Hand-knitted lace', 2],
    ['it\'s 3½" wide', 3],
    ['One – two — three ... four', 4],
    ['*un*believ**able**', 1],
    ['one\ntwo  three\\\nfour', 4],
    ['state-of-the-art https://example.org/a?b=c', 2],
    ['k2, *p1, k1*; rep from \\*', 5],
    ['Maße für Übung', 3],
    ['Mu\u0308tze', 1],
    ['10 cm', 2],
    ['編み物', 1],
    // Counted
    ['## A heading\n\ntext', 3],
    ['- one\n- two\n  - three', 3],
    ['> quoted words', 2],
    ['| a | b |\n|---|---|\n| c d | e |', 5],
    ['Work `k2tog` here', 3],
    ['text[^1]\n\n[^1]: in the note', 4],
    ['[the pattern](#S-07)', 2],
    // Not counted
    ['As shown [@ashdown2011, p. 57].', 2],
    ['@ashdown2011 [p. 57] shows', 1],
    ['see [](#S-07)', 1],
    ['![a photo of it](x.jpg "Its caption")', 0],
    ['~~~rows\nRow 1: Knit.\n~~~', 0],
    ['text\n\n    indented code', 1],
    ['::gauge{of=S-07}', 0],
    ['<b>one</b> two', 2],
    ['<div>\none two\n</div>', 0],
    [':smile Row 1:k2', 3],
  ])('%j has %i', (markdown, count) => {
    expect(words(markdown)).toBe(count);
  });

  test('grow by one with each word of a long text', () => {
    const text = `${'word '.repeat(19)}\n`.repeat(10).concat('\n').repeat(200);
    expect(words(text)).toBe(19 * 10 * 200);
    expect(words(`${text}more`)).toBe(19 * 10 * 200 + 1);
  });
});
