import {describe, expect, test, vi} from 'vitest';
import {loadLayouts} from '../../src/commands/load-layouts.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {renderTags} from '../../src/layout/render-tags.ts';
import {layoutInput} from '../layout/layout-case.ts';
import type {DrawnPage, DrawnPath} from './drawn-on-page.ts';
import {onePageEach, printedPages} from './printed-pages.ts';
import {sharedBrowser} from './shared-browser.ts';

// Where things stand on paper, measured in the printed file by a reader of PDFs that is not ours.

// Each test prints a document, which on a busy computer takes its time.
vi.setConfig({testTimeout: 240_000});
const browser = sharedBrowser();
const {fonts} = await loadLayouts(createMemoryWorkspace({}));

const inch = 25.4;
/** ISO 216:2007 for A4; ANSI/ASME Y14.1 for Letter, 8½ × 11 in. */
const papers = {A4: [210, 297], Letter: [8.5 * inch, 11 * inch]} as const;
/** How far anything may be from where it belongs, in millimetres; ISO 838 itself allows 0.5 mm between the holes. */
const tolerance = 0.2;
/** A rim that many home printers leave white (common practice, no source). */
const rim = 6;
const colours = {
  hole: '#8c8c8c',
  cut: '#1c1917',
  fold: '#8c8c8c',
  outline: '#b5aca6',
  tab: '#7a3326',
  thumb: '#c9c2bd',
};

function near(actual: number | undefined, expected: number, what = ''): void {
  const off = Math.abs((actual ?? Number.NaN) - expected);
  expect(off, `${what} ${actual} for ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** A binder of so many sections, the first of them with one question. Where only lines are measured it brings no fonts. */
function binderOf(sections: number, settings: object, given: LayoutInput['fonts'] = []): LayoutInput {
  const titles = Array.from({length: sections}, (_, index) => `Section ${index + 1}`);
  return {
    ...layoutInput({
      settings,
      sections: titles.map((title, index) => ({
        title,
        tab: title,
        requirements: index === 0 ? [{id: 'Q-01', kind: 'question', title: 'Wool'}] : [],
      })),
      items: [{'front-matter': {requirement: 'Q-01'}}],
    }),
    fonts: given,
  };
}

/** The pages by what they are: the sheet's name, `back` behind it for the blank side. */
async function printedBinder(input: LayoutInput): Promise<ReadonlyMap<string, DrawnPage>> {
  const render = (counts: Parameters<typeof renderBinder>[1]) => renderBinder(input, counts);
  const document = render(onePageEach(render));
  const {pages} = await printedPages(browser(), document, {tagged: false});
  expect(pages).toHaveLength(document.sheets.length);
  return new Map(
    document.sheets.map(({label, blank}, index) => [
      blank ? `${label} back` : label,
      pages[index] as DrawnPage,
    ]),
  );
}

/** Where lines cross: the middles of crosses of two lines, from top to bottom. */
function crosses({paths}: DrawnPage): readonly (readonly [number, number])[] {
  const lines = paths.filter(({colour, isFilled}) => colour === colours.hole && !isFilled);
  const middle = ({left, right, top, bottom}: DrawnPath) => [(left + right) / 2, (top + bottom) / 2] as const;
  return lines
    .filter(({top, bottom}) => bottom - top < 0.01)
    .filter((across) =>
      lines.some(({left, right, top, bottom}) => {
        const [x, y] = middle(across);
        return right - left < 0.01 && Math.hypot((left + right) / 2 - x, (top + bottom) / 2 - y) < 0.01;
      }),
    )
    .map(middle)
    .toSorted(([, a], [, b]) => a - b);
}

/**
 * ISO 838:1974: two holes, centres 80 mm apart and 12 mm from the edge, the middle of the edge between them. Four: one
 * more on either side, 80 mm further (the extension known as 888). Three: 4¼ in apart, ½ in from the edge (US practice).
 */
const patterns = {
  2: {fromEdge: 12, apart: [80]},
  3: {fromEdge: 0.5 * inch, apart: [4.25 * inch, 4.25 * inch]},
  4: {fromEdge: 12, apart: [80, 80, 80]},
} as const;

describe.each([
  ['A4', 2],
  ['A4', 3],
  ['A4', 4],
  ['Letter', 2],
  ['Letter', 3],
  ['Letter', 4],
] as const)('%s, %i rings', (paper, rings) => {
  const [width, height] = papers[paper];
  const {fromEdge, apart} = patterns[rings];

  test('hole marks are true on every page, mirrored on the backs, and no text comes near a hole', async () => {
    const pages = await printedBinder(binderOf(1, {paper, rings, sides: 'duplex'}));
    expect([...pages.keys()]).toEqual([
      'Title',
      'Title back',
      'Contents',
      'Contents back',
      'Tab 1',
      'Tab 1 back',
      'Q-01',
    ]);
    for (const [name, page] of pages) {
      const x = name.endsWith(' back') ? width - fromEdge : fromEdge;
      const holes = crosses(page);
      expect(holes, name).toHaveLength(rings);
      for (const hole of holes) near(hole[0], x, name);
      apart.forEach((distance, index) => {
        near((holes[index + 1]?.[1] ?? 0) - (holes[index]?.[1] ?? 0), distance, name);
      });
      near(((holes[0]?.[1] ?? 0) + (holes.at(-1)?.[1] ?? 0)) / 2, height / 2, name);
      // A hole is 6 mm wide (ISO 838), and a punch may be set 3 mm too deep.
      for (const {text, x: left, width: length, degrees} of page.texts) {
        if (degrees !== 0) continue;
        const clear = name.endsWith(' back') ? width - (left + length) : left;
        expect(clear, `${name}: ${text}`).toBeGreaterThan(fromEdge + 3 + 3);
      }
    }
  });

  test('printed on one side, every page has its holes on the left', async () => {
    const pages = await printedBinder(binderOf(1, {paper, rings, sides: 'single'}));
    expect([...pages.keys()]).toEqual(['Title', 'Contents', 'Tab 1', 'Q-01']);
    for (const [name, page] of pages) for (const [x] of crosses(page)) near(x, fromEdge, name);
  });
});

function onlyShape({paths}: DrawnPage, colour: 'tab' | 'thumb', what: string): DrawnPath {
  const found = paths.filter((path) => path.colour === colours[colour]);
  expect(found, `${what}: ${colour}`).toHaveLength(1);
  return found[0] as DrawnPath;
}

describe.each([
  ['A4', 5],
  ['A4', 8],
  ['Letter', 5],
  ['Letter', 8],
] as const)('%s, %i tabs', (paper, count) => {
  const [width, height] = papers[paper];

  test('tabs share out the edge, each on its own place with its text in it; the leaves behind are marked there', async () => {
    const pages = await printedBinder(binderOf(count, {paper, rings: 2, sides: 'duplex'}, fonts));
    const tabs = Array.from({length: count}, (_, index) =>
      onlyShape(pages.get(`Tab ${index + 1}`) as DrawnPage, 'tab', `Tab ${index + 1}`),
    );
    const [first, last] = [tabs[0] as DrawnPath, tabs.at(-1) as DrawnPath];
    const tall = first.bottom - first.top;
    const pitch = (last.top - first.top) / (count - 1);
    // A cut of 1/n: n of them share out the edge, whatever n is. 24 mm stay free at the top and as much at the bottom.
    near(count * pitch, height - 2 * 24);
    // A little is left free between two.
    expect(tall).toBeLessThan(pitch);
    expect(tall).toBeGreaterThan(pitch * 0.9);
    near((first.top + last.bottom) / 2, height / 2);
    tabs.forEach((tab, index) => {
      near(tab.top, first.top + index * pitch);
      near(tab.bottom - tab.top, tall);
      near(tab.right, width - rim);
      const text = pages
        .get(`Tab ${index + 1}`)
        ?.texts.filter(({degrees}) => degrees === 90)
        .map(({text: words, x, y, width: length, size}) => ({words, x, y, end: y + length, size}));
      expect(text?.map(({words}) => words).join('')).toBe(`Section ${index + 1}`);
      for (const {x, y, end} of text ?? []) {
        expect(x).toBeGreaterThan(tab.left);
        expect(x).toBeLessThan(tab.right);
        expect(y).toBeGreaterThan(tab.top);
        expect(end).toBeLessThan(tab.bottom);
      }
      // The empty back shows the tab's place at its own outer edge, the left one.
      const back = index === count - 1 ? null : pages.get(`Tab ${index + 1} back`);
      if (!back) return;
      const thumb = onlyShape(back, 'thumb', `Tab ${index + 1} back`);
      near(thumb.left, rim);
      near(thumb.top, tab.top);
      near(thumb.bottom, tab.bottom);
    });
    const item = onlyShape(pages.get('Q-01') as DrawnPage, 'thumb', 'Q-01');
    near(item.right, width - rim);
    near(item.top, first.top);
    near(item.bottom, first.bottom);
  });
});

describe('tags on plain paper', () => {
  const tagsOf = (settings: object, swatches: number) => {
    const ids = Array.from({length: swatches}, (_, index) => `S-${String(index + 1).padStart(2, '0')}`);
    const document = renderTags({
      ...layoutInput({
        settings,
        sections: [{title: 'Swatches', requirements: ids.map((id) => ({id, kind: 'swatch', title: 'Rib'}))}],
        items: ids.map((requirement) => ({'front-matter': {requirement}})),
      }),
      fonts,
    });
    if (document === null) throw new Error('there are tags to print');
    return printedPages(browser(), document, {tagged: false});
  };

  /** By hand: the most that fit with 10 mm left on every side, the block of them in the middle of the paper. */
  const plain = [
    {paper: 'A4', lines: {x: [15, 105, 195], y: [11, 66, 121, 176, 231, 286]}},
    {paper: 'Letter', lines: {x: [17.95, 107.95, 197.95], y: [29.7, 84.7, 139.7, 194.7, 249.7]}},
  ] as const;

  test.each(plain)(
    '$paper: outlines and cut marks of 90 × 55 mm are where the cuts go',
    async ({paper, lines}) => {
      const count = (lines.x.length - 1) * (lines.y.length - 1);
      const {pages} = await tagsOf({paper}, count);
      expect(pages).toHaveLength(1);
      const {paths, texts} = pages[0] as DrawnPage;
      // Beside the outlines, a thin line of the same colour stands within each tag.
      const outlines = paths.filter(
        ({colour, isFilled, top, bottom}) => colour === colours.outline && !isFilled && bottom - top > 1,
      );
      expect(outlines).toHaveLength(count);
      outlines.forEach(({left, right, top, bottom}, index) => {
        const [column, row] = [index % 2, Math.floor(index / 2)];
        near(left, lines.x[column] ?? 0);
        near(right, lines.x[column + 1] ?? 0);
        near(top, lines.y[row] ?? 0);
        near(bottom, lines.y[row + 1] ?? 0);
        const id = texts.find(({text}) => text === `S-${String(index + 1).padStart(2, '0')}`);
        expect(id?.x).toBeGreaterThan(left);
        expect(id?.y).toBeGreaterThan(top);
        expect(id?.y).toBeLessThan(bottom);
      });
      const marks = paths.filter(({colour, isFilled}) => colour === colours.cut && !isFilled);
      const [across, down] = [
        marks.filter(({top, bottom}) => bottom - top < 0.01),
        marks.filter(({left, right}) => right - left < 0.01),
      ];
      expect(across.length + down.length).toBe(marks.length);
      // One at each end of every cut, clear of the tags and of the rim.
      expect(across).toHaveLength(2 * lines.y.length);
      expect(down).toHaveLength(2 * lines.x.length);
      for (const y of lines.y) {
        const here = across.filter(({top}) => Math.abs(top - y) <= tolerance);
        expect(here).toHaveLength(2);
        for (const {left, right} of here)
          expect(
            (left >= rim && right < lines.x[0]) || (left > lines.x[2] && right <= papers[paper][0] - rim),
          ).toBe(true);
      }
      for (const x of lines.x) {
        const here = down.filter(({left}) => Math.abs(left - x) <= tolerance);
        expect(here).toHaveLength(2);
        for (const {top, bottom} of here)
          expect(
            (top >= rim && bottom < lines.y[0]) ||
              (top > (lines.y.at(-1) ?? 0) && bottom <= papers[paper][1] - rim),
          ).toBe(true);
      }
      const holes = paths.filter(({colour, isFilled}) => colour === colours.hole && isFilled);
      expect(holes).toHaveLength(count);
    },
  );

  test.each([
    // By hand: two rows of 110 mm in the middle of the paper, the fold half-way down each.
    ['A4', [38.5 + 55, 148.5 + 55]],
    ['Letter', [29.7 + 55, 139.7 + 55]],
  ] as const)(
    '%s, folded: the fold stands half-way down each tag of twice the height',
    async (paper, folds) => {
      const {pages} = await tagsOf({paper, tags: {reverse: 'folded'}}, 4);
      const dashed = (pages[0]?.paths ?? []).filter(
        ({colour, isFilled}) => colour === colours.fold && isFilled,
      );
      // The dashes of both folds of a row are one shape, as are those of each hole.
      const found = dashed.filter(({left, right}) => right - left > 100);
      expect(found).toHaveLength(1);
      near(found[0]?.top, folds[0]);
      near(found[0]?.bottom, folds[1]);
    },
  );
});
