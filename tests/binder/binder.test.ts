import {readFileSync} from 'node:fs';
import {readFile} from 'node:fs/promises';
import path from 'node:path';
import {describe, expect, test} from 'vitest';
import {stringify} from 'yaml';
import {type PdfFacts, readPdfFacts} from '../../src/print/pdf-facts.ts';
import {casesIn} from '../support/cases.ts';
import {expectFolder} from '../support/expect-folder.ts';
import {smallBinder, swatchleaf} from '../support/run-cli.ts';

/** Sizes of paper in millimetres: ISO 216:2007 for A4; ANSI/ASME Y14.1 for Letter, 8½ × 11 in. */
const papers = {A4: [210, 297], Letter: [215.9, 279.4]} as const;

/** The facts of a PDF as YAML that can be read in a review; measures are left to the tests that know the standard. */
function factsText(facts: PdfFacts): string {
  const {pages, outline, links, tags, fonts, destinations, dangling, ...rest} = facts;
  const numbered = links.map(({page, target}) => `page ${page + 1}: ${target}`);
  return stringify({
    ...rest,
    labels: pages.map(({label}) => label),
    outline,
    destinations: Object.fromEntries([...destinations].sort(([a], [b]) => (a < b ? -1 : 1))),
    links: numbered,
    dangling,
    fonts: fonts.map(({name, embedded}) => (embedded ? name : `${name} (not embedded)`)).sort(),
    tags: Object.fromEntries([...tags].sort(([a], [b]) => (a < b ? -1 : 1))),
  });
}

describe.each(casesIn('tests/binder', 1))('$name', ({folder, expected}) => {
  test('the printed binder, its tags and its packing list are what they were', async () => {
    const settings = readFileSync(path.join(folder, 'content/binder.yaml'), 'utf8');
    const binder = await smallBinder({'content/binder.yaml': settings});
    const ran = await swatchleaf(['build', binder]);
    expect(ran.err).not.toMatch(/error|warning/);
    const facts = async (name: string) => readPdfFacts(await readFile(path.join(binder, 'build', name)));
    const printed = {
      binder: await facts('binder.pdf'),
      tags: await facts('tags.pdf'),
      list: await facts('packing-list.pdf'),
      ...(settings.includes('inserts:') ? {inserts: await facts('inserts.pdf')} : {}),
    };
    const [width, height] = papers[/paper: Letter/.test(settings) ? 'Letter' : 'A4'];
    for (const page of Object.values(printed).flatMap(({pages}) => pages)) {
      // Chromium rounds a page to whole CSS pixels, of which one is 0.265 mm.
      expect(Math.abs(page.width - width)).toBeLessThan(0.265);
      expect(Math.abs(page.height - height)).toBeLessThan(0.265);
    }
    const everything = Object.values(printed);
    expect(everything.flatMap(({dangling}) => dangling)).toEqual([]);
    expect(everything.flatMap(({fonts}) => fonts.filter(({embedded}) => !embedded))).toEqual([]);
    expectFolder(expected, {
      'binder.yaml': factsText(printed.binder),
      'tags.yaml': factsText(printed.tags),
      'packing-list.yaml': factsText(printed.list),
      ...(printed.inserts ? {'inserts.yaml': factsText(printed.inserts)} : {}),
    });
  });
});
