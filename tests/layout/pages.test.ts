import {expect, test} from 'vitest';
import {casesIn} from '../support/cases.ts';
import {expectFolder} from '../support/expect-folder.ts';
import {type LayoutCase, readLayoutCase} from './layout-case.ts';

test.each(casesIn('tests/layout/pages', 1))('$name', ({folder, expected}) => {
  const layoutCase = readLayoutCase(folder);
  expectFolder(expected, {
    'page.html': shownHtml(layoutCase),
    'sheets.txt': sheetLines(layoutCase),
    ...(layoutCase.showsPageRules ? {'page-rules.css': pageRules(layoutCase)} : {}),
  });
});

/** The body of the document, or of the sheets that the case shows, without empty lines. */
function shownHtml({printable: {html}, show}: LayoutCase): string {
  const body = html.slice(html.indexOf('<body>') + '<body>'.length, html.indexOf('</body>'));
  const sheets = body.split(/(?=<section class="sheet )/).filter((text) => text.trim() !== '');
  const shown = sheets.filter(
    (text) => show === null || show.some((anchor) => text.includes(`id="${anchor}"`)),
  );
  expect(shown).toHaveLength(show?.length ?? sheets.length);
  const lines = shown.join('').split('\n');
  return `${lines.filter((line) => line.trim() !== '').join('\n')}\n`.replaceAll('\u00a0', '&nbsp;');
}

function sheetLines({printable: {sheets}}: LayoutCase): string {
  const lines = sheets.map(
    ({anchor, label, title, blank}) => `#${anchor}: ${label}${blank ? ', blank back' : `, ${title}`}`,
  );
  return `${lines.join('\n')}\n`.replaceAll('\u00a0', '&nbsp;');
}

/** The rules made for this document, which begin where our own style sheets end. */
function pageRules({printable: {html}}: LayoutCase): string {
  const css = html.slice(0, html.indexOf('</style>'));
  return css.slice(css.indexOf('@page{size:'));
}
