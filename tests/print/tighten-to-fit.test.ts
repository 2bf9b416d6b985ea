import {expect, test} from 'vitest';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {workedExample} from '../support/worked-example.ts';
import {drawnOnPages} from './drawn-on-page.ts';
import {documentOf} from './sample-binder.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

/** A4 less margins of 76 px leaves 970 px, of which 2 px are for rounding: room for 48 lines of 20 px and 8 px. */
const css = `:root{--air:1;--text-width:641px;--text-height:970px}
.sheet{--tightest:0.5}
p{margin:0;font:11px/20px "Source Serif 4"}
.gap{height:calc(40px * var(--air))}`;

/** A line, a gap of 40 px with all its air, and more lines. */
function sheetOf(lines: number): string {
  return `<p>cast on</p><div class="gap"></div>${'<p>purl</p>'.repeat(lines - 1)}`;
}

test.each([
  {lines: 46, gap: 40, pages: 1, why: 'fits as it is'},
  {lines: 47, gap: 28, pages: 1, why: 'is 12 px too long and loses three tenths of its air'},
  {lines: 48, gap: 40, pages: 2, why: 'is too long even with the least air, and keeps all of it'},
])('a sheet that $why', async ({lines, gap, pages: count}) => {
  const html = documentOf([sheetOf(lines)], {css});
  const {pdf} = await printPdf(browser(), {html, anchors: ['sheet-1']}, {tagged: false});
  const pages = await drawnOnPages(pdf);
  expect(pages).toHaveLength(count);
  const [first, second] = pages[0]?.texts ?? [];
  const between = ((second?.y ?? 0) - (first?.y ?? 0)) * (96 / 25.4);
  expect(between).toBeCloseTo(20 + gap, 0);
});

test.each([
  ['A4, one side', (settings: string) => settings],
  [
    'Letter, both sides',
    (settings: string) =>
      settings.replace('paper: A4', 'paper: Letter').replace('sides: single', 'sides: duplex'),
  ],
])('the contents of the worked example and every answer but two take one leaf on %s', async (_, rewrite) => {
  const {html, sheets} = renderBinder(await workedExample(rewrite), null);
  const anchors = sheets.map(({anchor}) => anchor);
  const {starts} = await printPdf(browser(), {html, anchors}, {tagged: false});
  const pagesOf = (anchor: string): number => {
    const next = anchors[anchors.indexOf(anchor) + 1] ?? '';
    return (starts.get(next) ?? 0) - (starts.get(anchor) ?? 0);
  };
  expect(pagesOf('sheet-contents')).toBe(1);
  const answers = anchors.filter((anchor) => anchor.startsWith('sheet-Q-'));
  expect(answers.length).toBeGreaterThan(8);
  expect(answers.filter((anchor) => pagesOf(anchor) > 1).length).toBeLessThanOrEqual(2);
});
