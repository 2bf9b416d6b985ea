import {readFile} from 'node:fs/promises';
import path from 'node:path';
import axe from 'axe-core';
import {launch} from 'puppeteer-core';
import {expect, test} from 'vitest';
import {foundBrowser} from '../print/shared-browser.ts';
import {smallBinder, swatchleaf} from '../support/run-cli.ts';

// axe-core holds a page against the Web Content Accessibility Guidelines 2.1, levels A and AA: contrast, headings,
// headers of tables, alternatives of pictures, language.

interface Violation {
  readonly id: string;
  readonly nodes: readonly {readonly html: string}[];
}

test('binder, check report and status page break no guideline of accessibility', {
  timeout: 120_000,
}, async () => {
  const settings = await readFile('tests/rules/base/content/binder.yaml', 'utf8');
  const folder = await smallBinder({'content/binder.yaml': `${settings}appendices: [concordance]\n`});
  expect((await swatchleaf(['build', folder])).code).toBe(0);
  expect((await swatchleaf(['status', '--page', folder])).code).toBe(0);
  const browser = await launch({executablePath: foundBrowser.path, args: ['--no-sandbox']});
  try {
    const page = await browser.newPage();
    await page.setBypassCSP(true);
    for (const name of ['binder', 'check-report', 'status']) {
      await page.setContent(await readFile(path.join(folder, `build/${name}.html`), 'utf8'));
      await page.evaluate(axe.source);
      const violations = (await page.evaluate(
        `axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa']}).then(({violations}) => violations)`,
      )) as readonly Violation[];
      const told = violations.map(({id, nodes}) => `${name}: ${id} ${nodes[0]?.html}`);
      expect(told).toEqual([]);
    }
    // What it finds shows that it looks.
    await page.setContent(
      '<html><body><img src="a.png"><p style="color:#aaa;background:#fff">grey</p></body></html>',
    );
    await page.evaluate(axe.source);
    const found = (await page.evaluate(
      'axe.run().then(({violations}) => violations)',
    )) as readonly Violation[];
    expect(found.map(({id}) => id)).toEqual(expect.arrayContaining(['image-alt', 'color-contrast']));
  } finally {
    await browser.close();
  }
});
