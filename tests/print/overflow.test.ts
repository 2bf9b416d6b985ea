import {describe, expect, test, vi} from 'vitest';
import {stringify} from 'yaml';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import type {Printable} from '../../src/layout/printable.ts';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {renderCheckReport} from '../../src/layout/render-check-report.ts';
import {renderInserts} from '../../src/layout/render-inserts.ts';
import {renderLetter} from '../../src/layout/render-letter.ts';
import {renderPackingList} from '../../src/layout/render-packing-list.ts';
import {renderReprint} from '../../src/layout/render-reprint.ts';
import {renderRoundEnvelope} from '../../src/layout/render-round-envelope.ts';
import {renderSelfCheck} from '../../src/layout/render-self-check.ts';
import {renderStatus} from '../../src/layout/render-status.ts';
import {renderTags} from '../../src/layout/render-tags.ts';
import type {DrawnText} from './drawn-on-page.ts';
import {smallLayoutInput} from './hostile-binder.ts';
import {printedPages} from './printed-pages.ts';
import {sharedBrowser} from './shared-browser.ts';

// Each test prints a document, which on a busy computer takes its time.
vi.setConfig({testTimeout: 240_000});
const browser = sharedBrowser();

/** A word of 120 letters that names where it was written and has no place to break. */
function word(box: string): string {
  const name = box.toLowerCase().replace(/[^a-z]/g, '');
  return `${name}${'knitpurl'.repeat(15)}`.slice(0, 120 - name.length) + name;
}

/** A title of about 300 letters in words of which each says where it was written. */
function title(box: string): string {
  const name = box
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .slice(0, 9);
  const words = Array.from({length: 60}, (_, index) => `${name}${index}q`);
  let text = '';
  for (const each of words) if (text.length + each.length < 300) text += `${text ? ' ' : ''}${each}`;
  return text;
}

/** A binder in which every text that a candidate or an assessor writes is what `say` makes of the box it stands in. */
function hostileFiles(say: (box: string) => string, settings: object = {}): Readonly<Record<string, string>> {
  const yaml = (value: object) => stringify(value, {lineWidth: 0});
  const item = (front: object, body: string) => `---\n${yaml(front)}---\n${body}\n`;
  return {
    'content/binder.yaml': yaml({
      candidate: {
        name: say('candidate'),
        number: say('number'),
        address: [say('street')],
        email: say('email'),
      },
      certificate: {name: say('certificate'), part: say('part'), guild: say('guild'), address: [say('hall')]},
      date: '2026-09-28',
      ...settings,
      appendices: ['concordance', 'attempts'],
      inserts: {
        spine: {width: '50 mm', height: '250 mm'},
        cover: true,
        tabs: {width: '50 mm', height: '13 mm'},
      },
      rounds: [{round: 1, letter: say('round letter')}],
    }),
    'content/syllabus.yaml': yaml({
      title: say('syllabus'),
      sections: [
        {
          title: say('section'),
          tab: say('tab'),
          requirements: [
            {
              id: 'S-01',
              kind: 'swatch',
              title: 'Edge',
              asks: say('asks'),
              limits: {'self-check': [say('by eye')]},
            },
            {id: 'P-01', kind: 'pattern', title: 'Mitts'},
            {id: 'V-01', kind: 'project', title: 'Hat'},
            {id: 'Q-01', kind: 'question', title: 'Q', asks: say('question'), 'tied-to': ['S-01']},
            {id: 'B-01', kind: 'review', title: 'B'},
            {id: 'R-01', kind: 'report', title: 'R'},
            {id: 'L-01', kind: 'letter', title: 'L'},
          ],
        },
      ],
    }),
    'content/library.yaml': yaml([
      {
        id: 'ashdown2011',
        type: 'book',
        title: say('source title'),
        author: [{family: say('author'), given: 'Maud'}],
        issued: 2011,
        publisher: say('publisher'),
        ISBN: '978-1-9999991-1-7',
      } as object,
      {
        id: 'lunde2016',
        type: 'webpage',
        title: 'The Even Fabric',
        author: [{family: 'Lunde', given: 'Tove'}],
        issued: 2016,
        accessed: '2026-03-09',
        URL: `https://slow-needle.example.org/${word('address')}`,
      },
    ] as object),
    'content/swatches/s-01.md': item(
      {
        requirement: 'S-01',
        title: say('swatch'),
        status: 'rework',
        yarn: {name: say('yarn'), fibre: say('fibre'), weight: 4, colour: say('colour')},
        needles: '4.5 mm',
        'cast-on': say('cast on'),
        'bind-off': say('bind off'),
        techniques: [
          {name: say('technique'), cite: ['@ashdown2011, p. 57', '@lunde2016'], note: say('note')},
        ],
        measured: [
          {
            when: 'after blocking',
            on: '2026-09-22',
            stitches: ['19.5 over 10 cm', '19.5 over 10 cm', '20 over 10 cm'],
            rows: ['27 over 10 cm', '27 over 10 cm', '27.5 over 10 cm'],
            size: {top: '12.2 cm', bottom: '12.4 cm', left: '12.6 cm', right: '12.5 cm'},
          },
        ],
        blocking: say('blocking'),
        photos: [{file: 's-01-front.jpg', description: say('photo')}],
        rework: [{round: 1, done: say('done'), before: {stitches: ['21 over 10 cm']}}],
      },
      [
        say('paragraph'),
        `## ${say('heading')}`,
        `- ${say('list')}`,
        `> ${say('quotation')} [@ashdown2011, p. 57]`,
        `\`${say('code')}\``,
        `~~~\n${say('block')}\n~~~`,
        `| ${say('column')} | b |\n| --- | --- |\n| ${say('cell')} | c |`,
        '::gauge',
        '978-1-9999991-1-7',
      ].join('\n\n'),
    ),
    'content/patterns/p-01.md': item(
      {
        requirement: 'P-01',
        title: say('pattern'),
        status: 'finished',
        sizes: [{name: say('size name')}],
        notions: [say('notion')],
      },
      `## Materials\n\n${say('materials')}\n\n~~~rows\ncast on: 24\nRow 1 (RS): K24.\n~~~`,
    ),
    'content/projects/v-01.md': item(
      {
        requirement: 'V-01',
        title: say('project'),
        status: 'finished',
        yarn: {name: say('wool')},
        for: say('wearer'),
      },
      say('story'),
    ),
    'content/questions/q-01.md': item(
      {requirement: 'Q-01', title: say('answer'), status: 'finished'},
      `${say('reply')} [@ashdown2011, p. 57]`,
    ),
    'content/reviews/b-01.md': item(
      {requirement: 'B-01', title: say('review'), reviews: 'ashdown2011', status: 'finished'},
      say('opinion'),
    ),
    'content/reports/r-01.md': item(
      {requirement: 'R-01', title: say('report'), status: 'finished'},
      say('findings'),
    ),
    'content/letters/l-01.md': item(
      {
        requirement: 'L-01',
        title: say('letter'),
        status: 'finished',
        to: [say('addressee')],
        salutation: say('salutation'),
        closing: say('closing'),
      },
      say('lines'),
    ),
    'content/assessments/round-0.yaml': yaml({
      round: 0,
      received: '2026-09-14',
      from: say('assessor'),
      results: {'S-01': {result: 'rework', remark: say('remark')}},
    }),
  };
}

type Renderers = Readonly<Record<string, (input: LayoutInput) => Printable | null>>;
const renderers: Renderers = {
  binder: (input) => renderBinder(input, null),
  tags: renderTags,
  inserts: renderInserts,
  letter: (input) => renderLetter(input, null),
  'packing list': (input) => renderPackingList(input, null),
  'check report': renderCheckReport,
  'self-check': renderSelfCheck,
  status: renderStatus,
  reprint: (input) => renderReprint(input, ['S-01'], null),
  'round letter': (input) => renderRoundEnvelope(input, 'letter', sentAgain(input), 1),
  'round packing list': (input) => renderRoundEnvelope(input, 'packing list', sentAgain(input), 1),
  'postal label': (input) => renderRoundEnvelope(input, 'label', sentAgain(input), 1),
};

function sentAgain({composed}: LayoutInput) {
  return [...composed.values()].map(({item}) => item).filter(({id}) => id === 'S-01');
}

/** A rim that many home printers leave white, in millimetres (common practice, no source). */
const rim = 6;
/** ISO 216:2007 for A4; ANSI/ASME Y14.1 for Letter, 8½ × 11 in. */
const papers = {A4: [210, 297], Letter: [215.9, 279.4]} as const;
/** Sheets that are one drawing as large as the paper, without margins for rings. */
const cutOut = /^(?:tag-|sheet-(?:tags|spine|cover|tab-strips)$)/;

/** Hole marks, tabs and their places. */
const besideText = ['#8c8c8c', '#f1edea', '#7a3326', '#c9c2bd'];

/** What a run of text covers; letters reach about three quarters of their size above the base line and a fifth below. */
function extentOf({x, y, width, degrees, size}: DrawnText) {
  const [above, below] = [0.75, 0.2].map((part) => (part * size * 25.4) / 72) as [number, number];
  switch (degrees) {
    case 90:
      return {left: x - below, right: x + above, top: y, bottom: y + width};
    case 180:
      return {left: x - width, right: x, top: y - below, bottom: y + above};
    default:
      return {left: x, right: x + width, top: y - above, bottom: y + below};
  }
}

/** The words of `said` that stand in the text of a sheet's HTML, without spaces. */
function wordsOn(html: string, said: Iterable<string>): readonly string[] {
  const text = html
    .replace(/<title>[^<]*<\/title>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');
  return [...said].flatMap((each) => each.split(' ')).filter((each) => text.includes(each));
}

interface Hostile {
  readonly say: (box: string) => string;
  readonly paper?: keyof typeof papers;
  readonly settings?: object;
  /** The sheets on which something does not fit, which is then told; by document, those of all others are laid out whole. */
  readonly told: Readonly<Record<string, readonly string[]>>;
}

/** The document is laid out whole within what a home printer can print, or each sheet on which it is not is told. */
async function expectWholeOrTold(
  document: Printable,
  paper: keyof typeof papers,
  said: Iterable<string>,
  told: readonly string[],
) {
  const {pages, troubles, starts} = await printedPages(browser(), document, {tagged: true});
  expect(troubles.map(({kind, anchor}) => `${kind}: ${anchor}`)).toEqual(
    told.map((anchor) => `overflow: ${anchor}`),
  );
  const [width, height] = papers[paper];
  const isDuplex = document.html.includes('@page:left{');
  const sheets = document.html.split(/(?=<section class="sheet )/).slice(1);
  let words = 0;
  document.sheets.forEach(({anchor}, index) => {
    const [from, to] = [anchor, document.sheets[index + 1]?.anchor].map((each) => starts.get(each ?? ''));
    const ownPages = pages.slice(from, to);
    expect(ownPages.length, anchor).toBeGreaterThan(0);
    const expected = wordsOn(sheets[index] ?? '', said);
    words += expected.length;
    if (told.includes(anchor)) return;
    ownPages.forEach(({texts}, page) => {
      const isVerso = isDuplex && ((from ?? 0) + page) % 2 === 1;
      // The text area, beyond which a sheet is cut off: 100 px for the rings on one side, 68 px on the other.
      const [ring, outer] = [(100 / 96) * 25.4, (68 / 96) * 25.4];
      const [before, behind] = isVerso ? [outer, ring] : [ring, outer];
      for (const text of texts) {
        const isBound = !cutOut.test(anchor) && text.degrees === 0;
        const {left, right, top, bottom} = extentOf(text);
        const where = `${anchor}, page ${page + 1}: ${text.text}`;
        const slack = 0.3; // Chromium rounds boxes to whole pixels of 0.265 mm.
        expect(left, where).toBeGreaterThan((isBound ? before : rim) - slack);
        expect(right, where).toBeLessThan(width - (isBound ? behind : rim) + slack);
        expect(top, where).toBeGreaterThan(rim);
        expect(bottom, where).toBeLessThan(height - rim);
      }
    });
    // What the program draws beside the text, holes and tabs, has colours of its own.
    for (const {colour, left, right} of cutOut.test(anchor) ? [] : ownPages.flatMap(({paths}) => paths)) {
      if (besideText.includes(colour)) continue;
      expect(right - left, `${anchor}: a drawing`).toBeLessThan(width - ((100 + 68) / 96) * 25.4 + 1);
      expect(right, `${anchor}: a drawing`).toBeLessThan(width - rim);
    }
    const printed = ownPages.flatMap(({texts}) => texts.map(({text}) => text)).join('');
    const letters = printed.replace(/\s+/g, '');
    expect(
      expected.filter((each) => !letters.includes(each)),
      anchor,
    ).toEqual([]);
  });
  // What is looked for is there to be found.
  expect(words).toBeGreaterThan(0);
}

const cases: readonly (readonly [string, Hostile])[] = [
  [
    'a word of 120 letters in every box',
    {say: word, told: {binder: ['tab-1'], tags: ['sheet-tags'], reprint: ['tag-S-01']}},
  ],
  [
    'a title of 300 letters in every box',
    {
      say: title,
      told: {
        binder: ['sheet-L-01', 'tab-1'],
        tags: ['sheet-tags', 'sheet-tags'],
        inserts: ['sheet-spine', 'sheet-cover', 'sheet-tab-strips'],
        letter: ['sheet-L-01'],
        reprint: ['tag-S-01'],
        'round letter': ['sheet-round-letter'],
      },
    },
  ],
];

describe.each(cases)('%s', (_, {say, paper = 'A4', settings = {}, told}) => {
  const said = new Set<string>();
  const input = smallLayoutInput(
    hostileFiles(
      (box) => {
        said.add(say(box));
        return say(box);
      },
      {paper, ...settings},
    ),
  );

  test.each(Object.entries(renderers))('%s', async (name, render) => {
    const document = render(await input);
    if (document === null) throw new Error('there is nothing to print');
    await expectWholeOrTold(document, paper, said, told[name] ?? []);
  });
});

test.each([
  ['', null],
  [', marked as a draft', {errors: 12}],
] as const)(
  'on Letter, on both sides and in large print, a word of 120 letters in every box%s',
  async (_, draft) => {
    const said = new Set<string>();
    const say = (box: string) => {
      said.add(word(box));
      return word(box);
    };
    const settings = {paper: 'Letter', rings: 3, sides: 'duplex', theme: 'large-print'};
    const input = {...(await smallLayoutInput(hostileFiles(say, settings))), draft};
    await expectWholeOrTold(renderBinder(input, null), 'Letter', said, ['tab-1']);
  },
);

describe('what is wider than the measure', () => {
  const swatch = (body: string, counts = '20 over 10 cm') =>
    smallLayoutInput({
      'content/swatches/s-01.md': `---\nrequirement: S-01\nstatus: finished\nmeasured:\n  - {when: after blocking, stitches: [${counts}], rows: [${counts}]}\n---\n${body}\n`,
    });
  const line = (text: (index: number) => string, count = 60) =>
    Array.from({length: count}, (_, index) => text(index));
  const row = (text: (index: number) => string) => `| ${line(text).join(' | ')} |`;
  const fence = (language: string, text: string) => `~~~${language}\n${text}\n~~~`;
  const colours = 'X = colour moss #27506b\n. = colour chalk #f2ede0\n';

  test.each([
    [
      'a table of 60 narrow columns',
      [row((i) => `c${i}q`), row(() => '---'), row((i) => `d${i}q`)].join('\n'),
      ['sheet-S-01'],
    ],
    [
      'a table of 60 columns of words',
      [row((i) => `column${i}q`), row(() => '---'), row((i) => `edge${i}q`)].join('\n'),
      ['sheet-S-01'],
    ],
    [
      'a table of 12 columns of words',
      `| ${line((i) => `column${i}q`, 12).join(' | ')} |\n|${' --- |'.repeat(12)}`,
      [],
    ],
    [
      'an address of 300 letters',
      `<https://fells.example.org/${line((i) => `part${i}q`, 40).join('/')}>`,
      [],
    ],
    ['numbers of books with no place to break', line((i) => `978199999${i}q`, 40).join(''), []],
    ['a line of code', fence('', line((i) => `code${i}q`, 40).join('')), []],
    [
      'a chart of 150 stitches',
      `${fence('rows', 'cast on: 150\nRow 1 (RS): K150.\nRow 2 (WS): P150.')}\n\n::chart\n\nafter1q`,
      [],
    ],
    [
      'a colour chart of 150 stitches',
      `${fence('chart', `${colours}\n${'X . '.repeat(75)} 1`)}\n\n::colour-chart\n\nafter1q`,
      [],
    ],
    [
      'a fabric of 150 stitches',
      `${fence('chart', `${colours}\n${'X . '.repeat(75)} 1`)}\n\n::fabric\n\nafter1q`,
      [],
    ],
    [
      'a row of 60 repeats',
      `${fence('rows', `cast on: 120\nRow 1 (RS): ${'k1, p1, '.repeat(59)}k1, p1.`)}\n\nafter1q`,
      [],
    ],
  ] as const)('%s', async (_, body, told) => {
    const said = new Set(body.match(/[a-z\d]*\dq/g) ?? []);
    const document = renderBinder(await swatch(body), null);
    await expectWholeOrTold(document, 'A4', said, told);
  });

  test('a gauge of 60 counts', async () => {
    const counts = line((i) => `${20 + i / 100} over 10 cm`).join(', ');
    const document = renderBinder(await swatch('::gauge\n\nafter1q', counts), null);
    await expectWholeOrTold(document, 'A4', ['after1q'], []);
  });
});
