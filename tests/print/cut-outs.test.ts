import {describe, expect, test} from 'vitest';
import {loadLayouts} from '../../src/commands/load-layouts.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {Printable} from '../../src/layout/printable.ts';
import {renderInserts} from '../../src/layout/render-inserts.ts';
import {renderTags} from '../../src/layout/render-tags.ts';
import {printPdf} from '../../src/print/html-to-pdf.ts';
import {layoutInput} from '../layout/layout-case.ts';
import {type DrawnPath, type DrawnText, drawnOnPages} from './drawn-on-page.ts';
import {readWithPdfJs} from './read-with-pdfjs.ts';
import {sharedBrowser} from './shared-browser.ts';

const browser = sharedBrowser();
const {fonts} = await loadLayouts(createMemoryWorkspace({}));

/** How far anything may be from where it belongs, in millimetres; label printers are set up to no less. */
const tolerance = 0.2;
/** What lines are drawn in: cut marks, outlines, and the dashes of holes and folds. */
const colours = {cut: '#1c1917', outline: '#b5aca6', dashed: '#8c8c8c'};

/** The input of a binder with so many swatches, in sections with these tabs. */
function input(settings: object, {swatches = 1, title = 'Rib', tabs = ['Swatches']} = {}) {
  const ids = Array.from({length: swatches}, (_, index) => `S-${String(index + 1).padStart(2, '0')}`);
  return {
    ...layoutInput({
      settings,
      sections: tabs.map((tab, index) => ({
        title: tab,
        tab,
        requirements: index === 0 ? ids.map((id) => ({id, kind: 'swatch', title})) : [],
      })),
      items: ids.map((requirement) => ({
        'front-matter': {
          requirement,
          yarn: {name: 'Fellside Worsted', colour: 'moss green'},
          needles: '4.5 mm',
          measured: [{when: 'after blocking', stitches: ['20 over 10 cm'], size: {top: '10 cm'}}],
        },
      })),
    }),
    fonts,
  };
}

async function print(document: Printable | null) {
  if (document === null) throw new Error('there is nothing to print');
  const anchors = document.sheets.map(({anchor}) => anchor);
  const {pdf, troubles} = await printPdf(browser(), {html: document.html, anchors}, {tagged: true});
  return {pages: await drawnOnPages(pdf), sizes: (await readWithPdfJs(pdf)).sizes, troubles};
}

/** Where the ids of the tags begin, in their order. */
function idsOf(texts: readonly DrawnText[]): readonly DrawnText[] {
  return texts.filter(({text}) => /^S-\d\d$/.test(text));
}

function linesIn(paths: readonly DrawnPath[], colour: keyof typeof colours): readonly DrawnPath[] {
  return paths.filter((path) => path.colour === colours[colour] && path.isFilled === (colour === 'dashed'));
}

function middleOf({left, right, top, bottom}: DrawnPath): readonly [number, number] {
  return [(left + right) / 2, (top + bottom) / 2];
}

function near(actual: number | undefined, expected: number): void {
  expect(Math.abs((actual ?? Number.NaN) - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(
    tolerance,
  );
}

/** Sheets as their makers describe them, measures in millimetres; see `src/model/label-sheet.ts`. */
const sheets = [
  {
    name: '21 of 63.5 x 38.1 mm',
    paper: [210, 297],
    columns: 3,
    rows: 7,
    first: [7.25, 15.15],
    size: [63.5, 38.1],
    pitch: [66.0, 38.1],
  },
  {
    name: '10 of 3.5 x 2 in',
    paper: [8.5 * 25.4, 11 * 25.4],
    columns: 2,
    rows: 5,
    first: [0.75 * 25.4, 0.5 * 25.4],
    size: [3.5 * 25.4, 2 * 25.4],
    pitch: [3.5 * 25.4, 2 * 25.4],
  },
] as const;

describe.each(sheets)('labels, $name', ({name, paper, columns, rows, first, size, pitch}) => {
  const count = columns * rows;
  const place = (index: number) => ({
    x: first[0] + (index % columns) * pitch[0],
    y: first[1] + Math.floor(index / columns) * pitch[1],
  });

  test('every tag stands on its label, well within it, and no line is drawn to cut along', async () => {
    const {pages, sizes, troubles} = await print(renderTags(input({tags: {sheet: name}}, {swatches: count})));
    expect(troubles).toEqual([]);
    expect(pages).toHaveLength(1);
    near(sizes[0]?.width, paper[0]);
    near(sizes[0]?.height, paper[1]);
    const [page = {paths: [], texts: []}] = pages;
    const ids = idsOf(page.texts);
    expect(ids).toHaveLength(count);
    const [origin] = ids;
    ids.forEach(({x, y}, index) => {
      near(x - (origin?.x ?? 0), place(index).x - first[0]);
      near(y - (origin?.y ?? 0), place(index).y - first[1]);
    });
    // Every run of text lies on one label, 1.5 mm or more from its edges.
    for (const {text, x, y, width} of page.texts) {
      const on = ids.findIndex((_, index) => {
        const {x: left, y: top} = place(index);
        return (
          x >= left + 1.5 && x + width <= left + size[0] - 1.5 && y >= top + 1.5 && y <= top + size[1] - 1.5
        );
      });
      expect(on, text).not.toBe(-1);
    }
    expect(page.paths.filter(({isFilled}) => !isFilled)).toEqual([]);
  });

  test('holes are true on the label', async () => {
    const {pages} = await print(renderTags(input({tags: {sheet: name, hole: true}}, {swatches: count})));
    const holes = linesIn(pages[0]?.paths ?? [], 'dashed');
    expect(holes).toHaveLength(count);
    holes.forEach((hole, index) => {
      const [x, y] = middleOf(hole);
      near(x, place(index).x + 7);
      near(y, place(index).y + size[1] / 2);
    });
  });

  test('printing begins on the label that is named, and goes on with the first of the next sheet', async () => {
    const settings = {tags: {sheet: name, 'first-label': count}};
    const {pages} = await print(renderTags(input(settings, {swatches: 2})));
    const [last, next] = pages.map(({texts}) => idsOf(texts));
    expect([last?.map(({text}) => text), next?.map(({text}) => text)]).toEqual([['S-01'], ['S-02']]);
    near((last?.[0]?.x ?? 0) - (next?.[0]?.x ?? 0), place(count - 1).x - first[0]);
    near((last?.[0]?.y ?? 0) - (next?.[0]?.y ?? 0), place(count - 1).y - first[1]);
  });
});

test('a sheet of labels by its measures: margins and gaps as they are written', async () => {
  const sheet = {
    paper: 'A4',
    columns: 2,
    rows: 4,
    width: '90 mm',
    height: '60 mm',
    left: '11 mm',
    top: '1.5 cm',
    'gap-across': '8 mm',
    'gap-down': '5 mm',
  };
  // The binder is on other paper: the labels keep theirs.
  const {pages, sizes} = await print(
    renderTags(input({paper: 'Letter', tags: {sheet, hole: true}}, {swatches: 4})),
  );
  near(sizes[0]?.height, 297);
  const middles = linesIn(pages[0]?.paths ?? [], 'dashed').map(middleOf);
  // By hand: 11 + 7 across, then 98 further; 15 + 30 down, then 65 further.
  const expected = [
    [18, 45],
    [116, 45],
    [18, 110],
    [116, 110],
  ];
  expect(middles).toHaveLength(4);
  middles.forEach(([x, y], index) => {
    near(x, expected[index]?.[0] ?? Number.NaN);
    near(y, expected[index]?.[1] ?? Number.NaN);
  });
});

describe('the reverse of a tag', () => {
  test('folded: upside down above the fold, cut out at twice the height, one hole through both halves', async () => {
    const {pages, troubles} = await print(renderTags(input({tags: {reverse: 'folded'}})));
    expect(troubles).toEqual([]);
    const {paths = [], texts = []} = pages[0] ?? {};
    const [outline, ...others] = linesIn(paths, 'outline');
    expect(others).toEqual([]);
    near((outline?.right ?? 0) - (outline?.left ?? 0), 90);
    near((outline?.bottom ?? 0) - (outline?.top ?? 0), 110);
    const dashed = linesIn(paths, 'dashed');
    const [fold] = dashed.filter(({top, bottom}) => bottom - top < 1);
    if (fold === undefined) throw new Error('no fold is drawn');
    const [, foldY] = middleOf(fold);
    near(foldY, (outline?.top ?? 0) + 55);
    near(fold.left, outline?.left ?? 0);
    // The last dash may end a little before the edge.
    expect(fold.right).toBeGreaterThan((outline?.right ?? 0) - 3);
    const [upper, lower, ...more] = dashed.filter((path) => path !== fold).map(middleOf);
    expect(more).toEqual([]);
    // Folded, the upper half lies behind the lower: the holes are as far from the fold.
    near(upper?.[0], lower?.[0] ?? Number.NaN);
    near(foldY - (upper?.[1] ?? 0), (lower?.[1] ?? 0) - foldY);
    const [front, reverse] = ['Yarn', 'Gauge'].map((word) => texts.find(({text}) => text.startsWith(word)));
    expect([front?.degrees, reverse?.degrees]).toEqual([0, 180]);
    expect(front?.y).toBeGreaterThan(foldY);
    expect(reverse?.y).toBeLessThan(foldY);
  });

  test('printed on the back: behind its front when the sheet is turned over its long edge', async () => {
    const settings = {tags: {sheet: '21 of 63.5 x 38.1 mm', reverse: 'printed'}};
    const {pages} = await print(renderTags(input(settings, {swatches: 2})));
    expect(pages).toHaveLength(2);
    const [front = [], back = []] = pages.map(({texts}) => idsOf(texts));
    expect(back.map(({text}) => text)).toEqual(['S-01', 'S-02']);
    // The text begins as far from the left edge of its label on either side; a label is 63.5 mm wide.
    front.forEach(({x, y}, index) => {
      const behind = back[index];
      const fromLeft = x - (7.25 + index * 66);
      near(behind?.x, 210 - (7.25 + index * 66 + 63.5) + fromLeft);
      near(behind?.y, y);
    });
    expect(pages[1]?.texts.some(({text}) => text === 'Gauge')).toBe(true);
    expect(pages[0]?.texts.some(({text}) => text === 'Gauge')).toBe(false);
  });
});

describe('text that is too long for its tag', () => {
  const sheet = '21 of 63.5 x 38.1 mm';
  const title = (words: number) => 'Lifted increase '.repeat(words).trim();

  test('is set smaller, but no word below 6 pt', async () => {
    const sizes = async (words: number) => {
      const {pages, troubles} = await print(renderTags(input({tags: {sheet}}, {title: title(words)})));
      const small = pages[0]?.texts.map(({size}) => size) ?? [];
      return {
        troubles,
        least: Math.min(...small),
        fact: pages[0]?.texts.find(({text}) => text === 'Yarn')?.size,
      };
    };
    const [short, long] = [await sizes(1), await sizes(10)];
    expect([...short.troubles, ...long.troubles]).toEqual([]);
    expect(long.fact).toBeLessThan(short.fact ?? 0);
    expect(long.least).toBeGreaterThanOrEqual(5.99);
  });

  test('is told when it does not fit then', async () => {
    const {troubles} = await print(renderTags(input({tags: {sheet}}, {title: title(40)})));
    expect(troubles).toEqual([
      {
        kind: 'overflow',
        anchor: 'sheet-tags',
        within: 'tag-of-S-01',
        detail: expect.stringMatching(/^`S-01 Lifted increase .*` is \d+ mm too tall$/),
      },
    ]);
  });
});

describe('inserts', () => {
  const tabs = ['Letter', 'Swatches', 'Questions', 'Projects'];

  test.each([
    // By hand: in the middle of the paper.
    ['A4', '50 mm', '250 mm', [80, 23.5, 130, 273.5]],
    ['A4', '2 in', '297 mm', [79.6, 0, 130.4, 297]],
    ['Letter', '30 mm', '8 in', [92.95, 38.1, 122.95, 241.3]],
  ] as const)('%s: a spine of %s × %s', async (paper, width, height, [left, top, right, bottom]) => {
    const {pages, troubles} = await print(renderInserts(input({paper, inserts: {spine: {width, height}}})));
    expect(troubles).toEqual([]);
    expect(pages).toHaveLength(1);
    const {paths = [], texts = []} = pages[0] ?? {};
    const outline = linesIn(paths, 'outline')[0];
    near(outline?.left, left);
    near(outline?.top, top);
    near(outline?.right, right);
    near(outline?.bottom, bottom);
    // Read from top to bottom, and within the strip.
    const along = texts.filter(({degrees}) => degrees === 90);
    expect(along.map(({text}) => text).join(' ')).toBe(
      'Certificate in Hand Knitting Part Two: Garment Techniques Marit Haldane-Roe FG-2-0417',
    );
    for (const {x, y, width: length} of along) {
      expect(x).toBeGreaterThan(left);
      expect(x).toBeLessThan(right);
      expect(y).toBeGreaterThan(top);
      expect(y + length).toBeLessThan(bottom);
    }
    // The line to check the print with is as long as it says.
    const ruler = linesIn(paths, 'cut').filter((path) => path.bottom - path.top > 50);
    expect(ruler).toHaveLength(1);
    near((ruler[0]?.bottom ?? 0) - (ruler[0]?.top ?? 0), 100);
  });

  test.each([
    ['name and number', ['Marit Haldane-Roe', 'FG-2-0417']],
    ['name', ['Marit Haldane-Roe']],
    ['number', ['FG-2-0417']],
  ] as const)('spine and cover name the candidate by %s', async (candidate, expected) => {
    const spine = {width: '50 mm', height: '297 mm'};
    const {pages} = await print(renderInserts(input({inserts: {spine, cover: true, candidate}})));
    expect(pages).toHaveLength(2);
    for (const {texts} of pages) {
      const shown = texts.map(({text}) => text).join(' ');
      for (const word of ['Marit Haldane-Roe', 'FG-2-0417']) {
        expect(shown.includes(word), word).toBe((expected as readonly string[]).includes(word));
      }
    }
  });

  test('tab strips: one for each section in their order, edge to edge, with marks at every cut', async () => {
    const settings = {inserts: {tabs: {width: '50 mm', height: '13 mm'}}};
    const {pages, troubles} = await print(renderInserts(input(settings, {tabs})));
    expect(troubles).toEqual([]);
    const {paths = [], texts = []} = pages[0] ?? {};
    const strips = linesIn(paths, 'outline');
    expect(strips).toHaveLength(tabs.length);
    strips.forEach((strip, index) => {
      near(strip.left, 80);
      near(strip.right, 130);
      near(strip.top - (strips[0]?.top ?? 0), 13 * index);
      near(strip.bottom - strip.top, 13);
      const on = texts.filter(({y}) => y > strip.top && y < strip.bottom);
      expect(on.map(({text}) => text.trim()).join(' ')).toContain(tabs[index]);
    });
    const marks = linesIn(paths, 'cut');
    for (const y of [0, 1, 2, 3, 4].map((line) => (strips[0]?.top ?? 0) + 13 * line)) {
      const atLine = marks.filter(
        (mark) => Math.abs(mark.top - y) < tolerance && mark.bottom - mark.top < 0.01,
      );
      expect(atLine.filter(({right}) => right <= 80)).toHaveLength(1);
      expect(atLine.filter(({left, right}) => left >= 130 && right < 140)).toHaveLength(1);
    }
  });

  test('a tab that is too long for its strip is told', async () => {
    const settings = {inserts: {tabs: {width: '20 mm', height: '6 mm'}}};
    const {troubles} = await print(
      renderInserts(input(settings, {tabs: ['Questions about every swatch and its yarn']})),
    );
    expect(troubles.map(({kind, anchor}) => [kind, anchor])).toEqual([['overflow', 'sheet-tab-strips']]);
  });
});
