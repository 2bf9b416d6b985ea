import {readFileSync} from 'node:fs';
import {join} from 'node:path';
import {expect, test} from 'vitest';
import {casesIn} from '../support/cases.ts';
import {layoutFiles} from './layout-case.ts';

const templates = [...layoutFiles].filter(([name]) => name.endsWith('.hbs'));
const styleSheets = [...layoutFiles].filter(([name]) => name.endsWith('.css'));

/** The only slots that print HTML as it is: each is `SafeHtml` in its view model. */
const htmlSlots = [
  'sheets/letter.hbs: body',
  'document.hbs: content',
  'partials/notes.hbs: this',
  'partials/prose.hbs: prose.html',
  'partials/references.hbs: references',
  'partials/techniques.hbs: citations',
  'sheets/attempts.hbs: html',
  'sheets/project.hbs: gauge',
  'sheets/project.hbs: size',
  'sheets/references.hbs: html',
  'sheets/review.hbs: reviewed',
  'sheets/swatch.hbs: gauge',
  'sheets/swatch.hbs: size',
];

test('HTML goes in unescaped only where the list allows it', () => {
  const found = templates.flatMap(([name, text]) => [
    ...Array.from(text.matchAll(/\{\{\{\s*([^}]+?)\s*\}\}\}/g), ([, slot]) => `${name}: ${slot}`),
    ...Array.from(text.matchAll(/\{\{~?\s*&\s*([^}]+?)\s*\}\}/g), ([, slot]) => `${name}: ${slot}`),
  ]);
  expect(found.sort()).toEqual([...htmlSlots].sort());
});

test.each(templates)(
  '%s holds no script, no style, no foreign address, and quotes every attribute',
  (_, text) => {
    expect(text).not.toMatch(/<script|<style|<link|<meta|<base|<iframe|<object|\son\w+=|javascript:/i);
    expect(text.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|\/\//);
    expect(text).not.toMatch(/=\{\{|=[^"'\s>{}]+\{\{/);
  },
);

test.each(templates)(
  '%s gives partials a context, never named values: those would come unsealed',
  (_, text) => {
    expect(text).not.toMatch(/\{\{#?>\s*[^}]*=/);
    // Inline partials and decorators are not needed, and the fewer features the better.
    expect(text).not.toMatch(/\{\{#?\*/);
  },
);

test('every sheet has a case among the pages', () => {
  const pages = casesIn('tests/layout/pages', 1).map(({expected}) =>
    readFileSync(join(expected, 'page.html'), 'utf8'),
  );
  const shown = pages.flatMap((page) =>
    Array.from(page.matchAll(/<section class="sheet ([\w-]+)"/g), ([, name]) => name),
  );
  const sheets = templates.flatMap(([name]) => /^sheets\/(.+)\.hbs$/.exec(name)?.[1] ?? []);
  expect([...new Set(shown)].sort()).toEqual(sheets.sort());
});

test('every partial is used, and every one that is used exists', () => {
  const used = new Set(
    templates.flatMap(([, text]) => Array.from(text.matchAll(/\{\{>\s*([\w-]+)/g), ([, name]) => name)),
  );
  const existing = templates.flatMap(([name]) => /^partials\/(.+)\.hbs$/.exec(name)?.[1] ?? []);
  expect([...used].sort()).toEqual(existing.sort());
});

test.each(styleSheets)('%s loads nothing', (_, text) => {
  expect(text).not.toMatch(/@import|@font-face|url\(/i);
});

test('colours of text and lines have a contrast of 4.5 to 1 on white, hairlines and tints apart', () => {
  const colours = styleSheets.flatMap(([, text]) =>
    Array.from(text.matchAll(/#[0-9a-f]{6}\b/gi), ([hex]) => hex),
  );
  const decoration = ['#b5aca6', '#f1edea', '#ddd6d1', '#8c8c8c'];
  const texts = [...new Set(colours)].filter((hex) => !decoration.includes(hex));
  expect(texts.length).toBeGreaterThan(0);
  for (const hex of texts) expect(contrastOnWhite(hex), hex).toBeGreaterThanOrEqual(4.5);
});

/** Contrast ratio as WCAG 2.2 defines it: (lighter + 0.05) ÷ (darker + 0.05) of the relative luminances. */
function contrastOnWhite(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05);
}
