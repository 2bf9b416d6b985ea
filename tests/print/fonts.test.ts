import {readFileSync} from 'node:fs';
import {getDocument, OPS, VerbosityLevel} from 'pdfjs-dist/legacy/build/pdf.mjs';
import {describe, expect, test} from 'vitest';
import {loadLayouts} from '../../src/commands/load-layouts.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import {fontFiles} from '../../src/layout/font-files.ts';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {layoutInput} from '../layout/layout-case.ts';
import {workedExample} from '../support/worked-example.ts';
import {printedPages} from './printed-pages.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();
const {fonts} = await loadLayouts(createMemoryWorkspace({}));

/** A font as pdf.js has it, once a page that uses it was read. */
interface ReadFont {
  readonly name: string;
  readonly missingFile: boolean;
  readonly isType3Font: boolean;
}

interface Glyph {
  readonly unicode: string;
}

/** The fonts of a file, by name without the mark of a subset, and what is written in each, as pdf.js finds it. */
async function fontsIn(bytes: Uint8Array) {
  const loading = getDocument({
    data: Uint8Array.from(bytes),
    isEvalSupported: false,
    verbosity: VerbosityLevel.ERRORS,
  });
  const document = await loading.promise;
  const found = new Map<string, {isEmbedded: boolean; isType3: boolean; letters: Set<string>}>();
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const {fnArray, argsArray} = await page.getOperatorList();
    let letters = new Set<string>();
    fnArray.forEach((operator, index) => {
      const [given] = (argsArray[index] ?? []) as readonly unknown[];
      if (operator === OPS.setFont) {
        const font = page.commonObjs.get(String(given)) as ReadFont;
        const name = font.name.replace(/^[A-Z]{6}\+/, '');
        const entry = found.get(name) ?? {isEmbedded: true, isType3: false, letters: new Set<string>()};
        entry.isEmbedded &&= !font.missingFile;
        entry.isType3 ||= font.isType3Font;
        letters = entry.letters;
        found.set(name, entry);
      } else if (operator === OPS.showText) {
        for (const glyph of given as readonly (Glyph | number)[])
          if (typeof glyph === 'object') for (const letter of glyph.unicode) letters.add(letter);
      }
    });
  }
  await loading.destroy();
  return found;
}

const {dependencies} = JSON.parse(readFileSync('package.json', 'utf8')) as {
  readonly dependencies: Readonly<Record<string, string>>;
};

/** The package that a font of this name comes from; undefined when it is none of ours. */
function packageOf(name: string): string | undefined {
  const plain = (text: string) => text.toLowerCase().replace(/[^a-z0-9]/g, '');
  return fontFiles.find(({family}) => plain(name).startsWith(plain(family)))?.package;
}

/**
 * What the worked example has that the text fonts lack: an arrow and a root, written by its author. Signs of charts are
 * drawn, not set.
 */
const fromFallback = ['→', '√'];

describe.each([
  ['A4', (settings: string) => settings],
  ['Letter', (settings: string) => settings.replace('paper: A4', 'paper: Letter')],
  ['large print', (settings: string) => `${settings}theme: large-print\n`],
] as const)('the worked example, %s', (_, rewrite) => {
  test('every font is one of ours and within the file, and two letters alone come from the fallback font', {
    timeout: 240_000,
  }, async () => {
    const document = renderBinder(await workedExample(rewrite), null);
    const {pdf} = await printedPages(browser(), document, {tagged: false});
    const found = await fontsIn(pdf);
    const packages = [...found.keys()].map((name) => [name, packageOf(name)] as const);
    // Text, labels, what is typed as it is, and the fallback: the packages that the program is installed with.
    expect([...new Set(packages.map(([, from]) => from))].sort()).toEqual([
      '@fontsource/dejavu-sans',
      '@fontsource/ibm-plex-mono',
      '@fontsource/source-sans-3',
      '@fontsource/source-serif-4',
    ]);
    for (const [name, from] of packages) expect(Object.keys(dependencies), name).toContain(from);
    for (const [name, {isEmbedded, isType3, letters}] of found) {
      // Type 3 is what a variable font becomes; printers draw it coarsely.
      expect({name, isEmbedded, isType3}).toEqual({name, isEmbedded: true, isType3: false});
      expect(letters.size, name).toBeGreaterThan(0);
    }
    expect([...(found.get('DejaVuSans')?.letters ?? [])].sort()).toEqual([...fromFallback].sort());
  });
});

test('fractions of an inch come from the text fonts on the sheet, in the running head and on a tab', async () => {
  // Every fraction that Unicode has a letter for and the text fonts have not.
  const fractions = [...'⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'];
  const requirements = fractions.map((fraction, index) => ({
    id: `Q-${index + 1}`,
    kind: 'question',
    title: `Wide: 3${fraction} in`,
  }));
  const input = {
    ...layoutInput({
      settings: {},
      sections: [{title: 'Edges of ⅛ in', tab: 'Of 2⅞ in', requirements}],
      items: requirements.map(({id}) => ({'front-matter': {requirement: id}})),
    }),
    fonts,
  };
  const {pdf, pages} = await printedPages(browser(), renderBinder(input, null), {tagged: false});
  expect([...(await fontsIn(pdf)).keys()].filter((name) => packageOf(name)?.includes('dejavu'))).toEqual([]);
  const shown = pages.flatMap(({texts}) => texts.map(({text}) => text)).join('|');
  for (const fraction of fractions) {
    // NFKC makes a numerator, U+2044 and a denominator of the letter; the head has them as they are typed.
    expect(shown).toContain(`Wide: 3 ${fraction.normalize('NFKC').replace('\u2044', '/')} in`);
  }
  const tab = pages.flatMap(({texts}) => texts.filter(({degrees}) => degrees === 90));
  expect(
    tab
      .map(({text}) => text)
      .join('')
      .replace(/\s/g, ''),
  ).toBe('Of27/8in');
});
