import type {Element, ElementContent, Root} from 'hast';
import rehypeParse from 'rehype-parse';
import {unified} from 'unified';
import {visit} from 'unist-util-visit';
import {describe, expect, test} from 'vitest';
import {casesIn} from '../support/cases.ts';
import {readLayoutCase} from './layout-case.ts';

const parser = unified().use(rehypeParse).freeze();

function elementsOf(root: Root | ElementContent, name?: string): Element[] {
  const found: Element[] = [];
  visit(root, 'element', (element) => {
    if (name === undefined || element.tagName === name) found.push(element);
  });
  return found;
}

function textOf(node: ElementContent | Root): string {
  let text = '';
  visit(node, 'text', ({value}) => {
    text += value;
  });
  return text;
}

describe.each(casesIn('tests/layout/pages', 1))('$name', ({folder}) => {
  const {printable, input} = readLayoutCase(folder);
  const root = parser.parse(printable.html);
  const elements = elementsOf(root);

  test('has a language, a title, a policy that loads nothing, and no script', () => {
    expect(elementsOf(root, 'html')[0]?.properties.lang).toBe(input.binder.settings.language);
    expect(textOf(elementsOf(root, 'title')[0] ?? root)).toContain('Marit Haldane-Roe');
    const policy = elementsOf(root, 'meta').find(({properties}) => properties.httpEquiv !== undefined);
    expect(policy?.properties.content).toContain("default-src 'none'");
    expect(
      elements.filter(({tagName}) => ['script', 'iframe', 'object', 'link', 'base'].includes(tagName)),
    ).toEqual([]);
  });

  test('has one section a sheet, in the order of the list of sheets', () => {
    const sections = elements.filter(({properties}) => [properties.className].flat().includes('sheet'));
    expect(sections.map(({properties}) => properties.id)).toEqual(printable.sheets.map(({anchor}) => anchor));
    for (const section of sections) expect(section.properties.ariaLabel).toBeTruthy();
  });

  test('every sheet that is not blank has a heading of the first level, and no level is jumped', () => {
    for (const {anchor, blank} of printable.sheets) {
      const section = elements.find(({properties}) => properties.id === anchor);
      const levels = section
        ? elementsOf(section)
            .filter(({tagName}) => /^h[1-6]$/.test(tagName))
            .map(({tagName}) => Number(tagName.slice(1)))
        : [];
      expect(levels[0], anchor).toBe(blank ? undefined : 1);
      levels.forEach((level, index) => {
        expect(level, anchor).toBeLessThanOrEqual((levels[index - 1] ?? level) + 1);
      });
    }
  });

  test('every header cell says what it heads, every picture what it shows, every id stands once', () => {
    for (const cell of elementsOf(root, 'th')) expect(cell.properties.scope, textOf(cell)).toBeTruthy();
    for (const picture of elementsOf(root, 'img')) expect(picture.properties.alt).toBeTruthy();
    for (const drawing of elementsOf(root, 'svg')) {
      expect(drawing.properties.ariaHidden ?? drawing.properties.ariaLabel).toBeTruthy();
    }
    const ids = elements.map(({properties}) => properties.id).filter((id) => id !== undefined);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('every link within the document arrives', () => {
    const ids = new Set(elements.map(({properties}) => properties.id));
    const targets = elementsOf(root, 'a').flatMap(({properties: {href}}) =>
      href === undefined ? [] : [String(href)],
    );
    expect(targets.filter((href) => !ids.has(href.slice(1)))).toEqual([]);
  });
});
