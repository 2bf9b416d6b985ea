import {expect, test} from 'vitest';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {workedExample} from '../support/worked-example.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();

/**
 * What is read as text and is set from the font of last resort, since the text fonts lack it. Charts have signs of their
 * own, and a box to tick is one. A letter that the program writes must not be among these; an author may need others.
 */
const writtenByTheAuthor = ['→', '√'];

const markLetters = `
  const drawn = '.box, .chart svg, .colour-chart svg, .fabric svg, title, style';
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const texts = [];
  while (walker.nextNode()) texts.push(walker.currentNode);
  const seen = new Set();
  for (const text of texts) {
    const parent = text.parentElement;
    if (parent.closest(drawn)) continue;
    for (const letter of new Set(text.data.match(/[^\\0-\\xff]/g) ?? [])) {
      const style = getComputedStyle(parent);
      const key = [letter, style.fontFamily, style.fontWeight, style.fontStyle].join();
      if (seen.has(key)) continue;
      seen.add(key);
      const copy = parent.ownerDocument.createElement('i');
      copy.dataset.letter = letter;
      copy.textContent = letter;
      Object.assign(copy.style, {fontFamily: style.fontFamily, fontWeight: style.fontWeight, fontStyle: style.fontStyle});
      document.body.append(copy);
    }
  }`;

test('the text of the worked example is set from the text fonts, but for these letters', {
  timeout: 240_000,
}, async () => {
  const {html} = renderBinder(await workedExample(), null);
  const found = await browser().withPage(async (page) => {
    await page.setContent(html);
    const session = await page.createCDPSession();
    await session.send('DOM.enable');
    await session.send('CSS.enable');
    // Each letter beyond Latin-1 once in each style that it is set in.
    await page.evaluate(markLetters);
    const {root} = await session.send('DOM.getDocument', {depth: 0});
    const {nodeIds} = await session.send('DOM.querySelectorAll', {
      nodeId: root.nodeId,
      selector: '[data-letter]',
    });
    const letters = new Map<string, string>();
    for (const nodeId of nodeIds) {
      const {fonts} = await session.send('CSS.getPlatformFontsForNode', {nodeId});
      const {attributes} = await session.send('DOM.getAttributes', {nodeId});
      const letter = attributes[attributes.indexOf('data-letter') + 1] ?? '';
      for (const {familyName, isCustomFont} of fonts) {
        if (!isCustomFont || /^DejaVu/.test(familyName)) letters.set(letter, familyName);
      }
    }
    return letters;
  }, 60_000);
  expect([...found.keys()].sort()).toEqual([...writtenByTheAuthor].sort());
  expect(new Set(found.values())).toEqual(new Set(['DejaVu Sans']));
});
