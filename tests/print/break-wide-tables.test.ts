import {expect, test} from 'vitest';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {drawnOnPages} from './drawn-on-page.ts';
import {documentOf} from './sample-binder.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

/** The styles of the layouts let text break anywhere, but not in tables. A4 less margins of 76 px leaves 641 px. */
const css = `:root{--text-width:641px;--text-height:970px}
body{overflow-wrap:anywhere}
table{width:100%;overflow-wrap:break-word}
td{padding:0;font:20px "Source Serif 4"}`;

/** Six columns: one of long text, which leaves the others as little as their words allow. */
function tableOf(words: string): string {
  const cells = [`<td>${'worsted and superwash, '.repeat(9)}</td>`, ...Array(5).fill(`<td>${words}</td>`)];
  return `<table><tr>${cells.join('')}</tr></table>`;
}

async function printed(words: string) {
  const html = documentOf([tableOf(words)], {css});
  const {pdf, troubles} = await printPdf(browser(), {html, anchors: ['sheet-1']}, {tagged: true});
  const texts = (await drawnOnPages(pdf)).flatMap((page) => page.texts.map(({text}) => text.trim()));
  return {texts, overflow: troubles.filter(({kind}) => kind === 'overflow')};
}

test('a table that has room for its words keeps each of them whole', async () => {
  const {texts, overflow} = await printed('lengths');
  expect(texts.filter((text) => text === 'lengths')).toHaveLength(5);
  expect(overflow).toEqual([]);
});

test('one that would become wider than its column by them breaks them', async () => {
  const {texts, overflow} = await printed('l'.repeat(60));
  expect(texts).not.toContain('l'.repeat(60));
  expect(texts.join('').match(/l{60}/g)).not.toBeNull();
  expect(overflow).toEqual([]);
});
