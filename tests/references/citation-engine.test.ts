import {createRequire} from 'node:module';
import {beforeAll, describe, expect, test} from 'vitest';
import {type CitationEngine, createCitationEngine} from '../../src/references/citation-engine.ts';
import type {CitationLanguage} from '../../src/references/citation-locale.ts';
import type {CitationStyle} from '../../src/references/citation-style.ts';
import type {Source} from '../../src/references/source.ts';
import {cluster, inText} from './clusters.ts';

const edge: Source = {
  id: 'edge',
  type: 'book',
  title: 'The knitted edge: selvedges in plain and fancy work',
  author: [{family: 'Ashdown', given: 'Clemency'}],
  issued: {'date-parts': [[2011]]},
  publisher: 'Weir Press',
  'publisher-place': 'Sallow Bridge',
  note: 'borrowed from Ann\ntitle: Another title',
  shelf: 'library',
};
const lace: Source = {
  id: 'lace',
  type: 'motion_picture',
  title: 'Blocking lace',
  director: [{family: 'Lunde', given: 'Ingrid'}],
  issued: {'date-parts': [[2016]]},
  URL: 'https://film.example/lace?a=1&b=2',
};
const drape: Source = {
  id: 'drape',
  type: 'article-journal',
  title: 'Ease and drape',
  author: [
    {family: 'Otter', given: 'Peter'},
    {family: 'Pike', given: 'Quinta'},
  ],
  issued: {'date-parts': [[2019]]},
  'container-title': 'Hand Knitting Quarterly',
  volume: '5',
  issue: '3',
  page: '293-296',
  DOI: 'https://doi.org/10.5555/hkq.5.3.293',
};
const letter: Source = {
  id: 'letter',
  type: 'personal_communication',
  author: [{family: 'Weir', given: 'Ann'}],
  issued: {'date-parts': [[2025, 1, 2]]},
};
const care: Source = {
  id: 'care',
  type: 'webpage',
  title: 'Care symbols',
  URL: 'https://care.example/',
  accessed: {'date-parts': [[2025, 6, 3]]},
};
const nothing: Source = {id: 'nothing', type: 'book'};
const sources = [edge, lace, drape, letter, care, nothing, {...edge, title: 'A second entry of one key'}];

const makeEngine = (style: CitationStyle, language: CitationLanguage = 'en-US') =>
  createCitationEngine({style, language, sources});

const made = new Map<string, Promise<CitationEngine>>();
function engineFor(style: CitationStyle, language: CitationLanguage = 'en-US'): Promise<CitationEngine> {
  const name = `${style} ${language}`;
  const engine = made.get(name) ?? makeEngine(style, language);
  made.set(name, engine);
  return engine;
}

const loadsProcessor = () =>
  Object.keys(createRequire(import.meta.url).cache).some((file) => /[\\/]citeproc[\\/]/.test(file));

test('the processor is loaded with the first engine, not before', async () => {
  expect(loadsProcessor()).toBe(false);
  await engineFor('numeric');
  expect(loadsProcessor()).toBe(true);
});

describe.each([
  {
    style: 'author-date' as const,
    locators: {
      '@edge, p. 57': '(Ashdown, 2011, p. 57)',
      '@edge, pp. 112-114': '(Ashdown, 2011, pp. 112–114)',
      '@edge, pp. 57, 60': '(Ashdown, 2011, pp. 57, 60)',
      '@edge, xii': '(Ashdown, 2011, p. xii)',
      '@edge, ch. 3': '(Ashdown, 2011, Chapter 3)',
      '@edge, fig. 2': '(Ashdown, 2011, Figure 2)',
      '@edge, figs. 2, 4': '(Ashdown, 2011, Figures 2, 4)',
      '@edge, plate IV': '(Ashdown, 2011, Plate IV)',
      '@edge, table 3': '(Ashdown, 2011, Table 3)',
      '@edge, § 4': '(Ashdown, 2011, Section 4)',
      '@edge, para. 5': '(Ashdown, 2011, para. 5)',
      '@edge, vol. 2': '(Ashdown, 2011, Volume 2)',
      '@edge, no. 2': '(Ashdown, 2011, Issue 2)',
      '@lace, t. 3:20': '(Lunde, 2016, 3:20)',
      '@edge, vol. 2, p. 57': '(Ashdown, 2011, Volume 2, p. 57)',
      'see @edge, p. 57 (my emphasis)': '(see Ashdown, 2011, p. 57 (my emphasis))',
      '-@edge, p. 57': '(2011, p. 57)',
      '@drape; @edge, p. 5, and onward': '(Ashdown, 2011, p. 5, and onward; Otter &#38; Pike, 2019)',
    },
    sentence: 'Otter and Pike (2019, pp. 293–294)',
  },
  {
    style: 'numeric' as const,
    locators: {
      '@edge, p. 57': '(1, p. 57)',
      '@edge, pp. 112-114': '(1, pp. 112–114)',
      '@edge, xii': '(1, p. xii)',
      '@edge, ch. 3': '(1, chap. 3)',
      '@edge, fig. 2': '(1, fig. 2)',
      '@edge, plate IV': '(1, pl. IV)',
      '@lace, t. 3:20': '(1, at 3:20)',
      'see @edge, p. 57': '(see 1, p. 57)',
      '@edge; @lace; @drape': '(1–3)',
      '@lace; @drape; @edge, p. 4; @nothing': '(1; 2; 3, p. 4; 4)',
    },
    sentence: 'Otter and Pike (1, pp. 293–294)',
  },
])('$style', ({style, locators, sentence}) => {
  let engine: CitationEngine;
  beforeAll(async () => {
    engine = await engineFor(style);
  });

  test.each(Object.entries(locators))('%s → %s', (text, html) => {
    expect(engine.renderItem([cluster(text)])).toMatchObject({clusters: [{html, note: null}], notes: []});
  });

  test('an author in the sentence', () => {
    expect(engine.renderItem([inText('@drape [pp. 293-294]')]).clusters[0]?.html).toBe(sentence);
  });
});

test.each([
  ['author-date', '(Ashdown, 2011, pp. 62–63, 70)'],
  ['numeric', '(1, pp. 62–63, 70)'],
] as const)('two places in one source are one citation: %s', async (style, html) => {
  const engine = await makeEngine(style);
  expect(engine.renderItem([cluster('@edge, pp. 62-63; @edge, p. 70')]).clusters[0]?.html).toBe(html);
  // A figure, or a word between them, keeps them apart.
  const apart = engine.renderItem([cluster('@edge, p. 62; @edge, fig. 3')]).clusters[0]?.html;
  expect(apart).toMatch(/fig\S* 3/i);
});

describe('note', () => {
  let engine: CitationEngine;
  beforeAll(async () => {
    engine = await engineFor('note');
  });
  const full =
    'Clemency Ashdown, <i>The Knitted Edge: Selvedges in Plain and Fancy Work</i> (Sallow Bridge: Weir Press, 2011)';
  const film = 'Ingrid Lunde, <i>Blocking Lace</i>, 2016';
  const link = '<a href="https://film.example/lace?a=1&#38;b=2">https://film.example/lace?a=1&#38;b=2</a>';

  test.each([
    ['@edge, p. 57', `${full}, 57.`],
    ['@edge, pp. 112-114', `${full}, 112–14.`],
    ['@edge, figs. 112-114', `${full}, figs. 112–114.`],
    ['@edge, pp. xii-xv', `${full}, xii–xv.`],
    ['@edge, ch. 3', `${full}, chap. 3.`],
    ['@edge, fig. 2', `${full}, fig. 2.`],
    ['@edge, plate IV', `${full}, pl. IV.`],
    ['see @edge, p. 57, and onward', `See ${full}, 57, and onward.`],
    ['@lace, t. 3:20', `${film}, 3:20, ${link}.`],
    ['@edge; @lace', `${full}; ${film}, ${link}.`],
  ])('%s', (text, note) => {
    expect(engine.renderItem([cluster(text)])).toMatchObject({
      clusters: [{html: '<sup>1</sup>', note: 1}],
      notes: [note],
    });
  });

  test('a later note is short, and says the title where the note before names another work', () => {
    const {notes} = engine.renderItem([
      cluster('@edge, 5'),
      cluster('@edge, 6'),
      cluster('@lace'),
      cluster('@edge, 7'),
    ]);
    expect(notes).toEqual([
      `${full}, 5.`,
      'Ashdown, 6.',
      `${film}, ${link}.`,
      'Ashdown, <i>The Knitted Edge</i>, 7.',
    ]);
  });

  test('an author in the sentence stands before the number', () => {
    const {clusters} = engine.renderItem([cluster('@edge'), inText('@drape [p. 293]'), inText('@care')]);
    expect(clusters.map(({html}) => html)).toEqual([
      '<sup>1</sup>',
      'Otter and Pike<sup>2</sup>',
      '<i>Care symbols</i><sup>3</sup>',
    ]);
  });
});

test('British and American rendering differ in the marks of quotation and the order of the date', async () => {
  const entries = async (language: CitationLanguage) =>
    (await engineFor('note', language))
      .renderBibliography(['drape', 'care'])
      .map(({html}) => html.replace(/<a.*/, ''));
  expect(await entries('en-US')).toEqual([
    '“Care Symbols.” Accessed June 3, 2025. ',
    'Otter, Peter, and Quinta Pike. “Ease and Drape.” <i>Hand Knitting Quarterly</i> 5, no. 3 (2019): 293–96. ',
  ]);
  expect(await entries('en-GB')).toEqual([
    '‘Care Symbols’. Accessed 3 June 2025. ',
    'Otter, Peter, and Quinta Pike. ‘Ease and Drape’. <i>Hand Knitting Quarterly</i> 5, no. 3 (2019): 293–96. ',
  ]);
});

describe('lists', () => {
  test('an item lists what it cites, once, in the order of the style', async () => {
    const clusters = [cluster('@lace'), cluster('@edge; @unknown'), cluster('@lace, t. 1:00')];
    const rows = async (style: CitationStyle) =>
      (await engineFor(style)).renderItem(clusters).references.map(({key, number}) => [key, number]);
    expect(await rows('author-date')).toEqual([
      ['edge', null],
      ['lace', null],
    ]);
    expect(await rows('note')).toEqual([
      ['edge', null],
      ['lace', null],
    ]);
    expect(await rows('numeric')).toEqual([
      ['lace', 1],
      ['edge', 2],
    ]);
  });

  test.each(['author-date', 'note', 'numeric'] as const)(
    'the full list of %s is alphabetical, without numbers',
    async (style) => {
      const engine = await engineFor(style);
      const entries = engine.renderBibliography(['lace', 'unknown', 'drape', 'lace', 'edge', 'care']);
      expect(entries.map(({key, number}) => [key, number])).toEqual(
        ['edge', 'care', 'lace', 'drape'].map((key) => [key, null]),
      );
    },
  );

  test('addresses and DOIs are links', async () => {
    const engine = await engineFor('numeric');
    const [drapeEntry, laceEntry] = ['drape', 'lace'].map((key) => engine.renderBibliography([key])[0]?.html);
    expect(drapeEntry).toContain('<a href="https://doi.org/10.5555/hkq.5.3.293">doi:10.5555/hkq.5.3.293</a>');
    expect(laceEntry).toContain('<a href="https://film.example/lace?a=1&#38;b=2">');
  });

  test('of two entries with one key the first counts; the candidate’s own note stays at home', async () => {
    const [entry] = (await engineFor('author-date')).renderBibliography(['edge']);
    expect(entry?.html).toBe(
      'Ashdown, C. (2011). <i>The knitted edge: selvedges in plain and fancy work</i>. Weir Press.',
    );
  });

  test('a source that a style leaves out of its list shifts no other entry', async () => {
    // APA 7, section 8.9: a personal communication is cited in the text only.
    const engine = await engineFor('author-date');
    const entries = engine.renderBibliography(['edge', 'letter', 'lace']);
    expect(entries.map(({key}) => key)).toEqual(['edge', 'lace']);
    expect(entries[1]?.html).toContain('Lunde, I. (Director).');
    expect(engine.renderItem([cluster('@letter')]).clusters[0]?.html).toBe(
      '(A. Weir, personal communication, January 2, 2025)',
    );
  });

  test('a source of which nothing is known shows its key', async () => {
    const engine = await engineFor('numeric');
    expect(engine.renderItem([cluster('@nothing, p. 2')])).toMatchObject({
      clusters: [{html: '(1, p. 2)'}],
      references: [{key: 'nothing', html: 'nothing, n.d.'}],
    });
  });
});

describe.each(['author-date', 'note', 'numeric'] as const)('%s', (style) => {
  let engine: CitationEngine;
  beforeAll(async () => {
    engine = await engineFor(style, 'en-GB');
  });

  test('an unknown key is marked and takes no number', () => {
    const {clusters, notes, references} = engine.renderItem([
      cluster('@unknown, p. 4'),
      cluster('@unknown; @edge'),
      inText('@unknown [p. 4]'),
    ]);
    const mark = '<span class="unknown-source">@unknown</span>';
    expect(clusters[0]).toEqual({html: mark, note: null});
    expect(clusters[1]?.html).toMatch(new RegExp(`^.*(2011|1).* ${mark}$`));
    expect(clusters[1]?.note).toBe(style === 'note' ? 1 : null);
    expect(clusters[2]).toEqual({html: mark, note: null});
    expect(notes).toHaveLength(style === 'note' ? 1 : 0);
    expect(references.map(({key}) => key)).toEqual(['edge']);
  });

  test('no clusters give nothing', () => {
    engine.renderItem([cluster('@edge')]);
    expect(engine.renderItem([])).toEqual({clusters: [], notes: [], references: []});
    expect(engine.renderBibliography([])).toEqual([]);
  });
});
