import fc from 'fast-check';
import {expect, test} from 'vitest';
import {type CitationEngine, createCitationEngine} from '../../src/references/citation-engine.ts';
import {type Source, type SourceType, sourceTypes} from '../../src/references/source.ts';
import {cluster, inText} from './clusters.ts';

const ashdown = {author: [{family: 'Ashdown', given: 'Clemency'}], issued: {'date-parts': [[2011]]}};
/** Two works of one author and year, and two authors of one name, which styles tell apart by letters and first names. */
const alike: readonly Source[] = [
  {id: 'edge', type: 'book', title: 'The knitted edge', ...ashdown},
  {id: 'hem', type: 'book', title: 'The knitted hem', ...ashdown},
  {
    id: 'rib',
    type: 'book',
    title: 'Ribs',
    author: [{family: 'Ashdown', given: 'Wilf'}],
    issued: ashdown.issued,
  },
  {id: 'care', type: 'webpage', title: 'Care symbols', URL: 'https://care.example/'},
];
const items = [
  [cluster('@edge, p. 57'), cluster('@edge, p. 58'), cluster('@care')],
  [cluster('@hem, ch. 2; @edge'), cluster('@edge')],
  [cluster('@rib'), cluster('@hem'), inText('@edge [p. 4]'), cluster('@rib')],
  [cluster('@care; @unknown')],
];
const keyLists = [['edge'], ['hem', 'edge', 'rib'], ['care', 'rib']];

type Render = (engine: CitationEngine) => unknown;
const renders: readonly Render[] = [
  ...items.map(
    (item): Render =>
      (engine) =>
        engine.renderItem(item),
  ),
  ...keyLists.map(
    (keys): Render =>
      (engine) =>
        engine.renderBibliography(keys),
  ),
];

test.each(['author-date', 'note', 'numeric'] as const)(
  '%s: what is rendered does not depend on what was rendered before it, since leaves are loose',
  async (style) => {
    const makeEngine = () => createCitationEngine({style, language: 'en-GB', sources: alike});
    const shared = await makeEngine();
    const watched = new Map<Render, unknown>();
    // Not all are watched, because building an engine takes long.
    for (const render of [renders[1], renders[2], renders[5]]) {
      if (render) watched.set(render, render(await makeEngine()));
    }
    expect(watched.size).toBe(3);
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...renders), {maxLength: 4}),
        fc.constantFrom(...watched),
        (before, [render, alone]) => {
          for (const earlier of before) earlier(shared);
          expect(render(shared)).toEqual(alone);
        },
      ),
      {numRuns: 12},
    );
  },
);

const hostile = fc.oneof(
  fc.constantFrom(
    '<script>alert(1)</script>',
    '<img src=x onerror="alert(1)">',
    '"><svg onload=alert(1)>',
    '</div></body>',
    '<!--0-->',
    '<a href="javascript:alert(1)">x</a>',
    'javascript:alert(1)',
    'data:text/html,<script>1</script>',
    'https://x.example/" onmouseover="alert(1)',
    "https://x.example/' onmouseover='alert(1)",
    'https://x.example/<b>?a=1&b=2&lt;i&gt;',
    '{\\textbf{bold}} {{braces}} %DE $\\LaTeX$ \\input{x}',
    '{:title: Stolen}',
    '<i>open <b>and <sup>never closed',
    '<span style="font-variant:small-caps;">caps</span>',
    '<span class="nocase" onclick="x">no case</span>',
    '“quotes” \'and\' "more"',
    '__proto__',
    '[CSL STYLE ERROR: reference with no printed form.]',
    '[NO_PRINTED_FORM]',
    'سترة صوف',
    '\u202eright to left\u0000',
    '%%STRING%%',
    '$& $1 $$',
  ),
  fc.string({unit: fc.constantFrom(...'<>"\'&;:{}[]()%$\\/ aA1.–|_*`#=!-')}),
  fc.string({unit: 'grapheme', maxLength: 12}),
);
const name = fc.record(
  {family: hostile, given: hostile, literal: hostile, 'non-dropping-particle': hostile, suffix: hostile},
  {requiredKeys: []},
);
const date = fc.record({
  'date-parts': fc.array(fc.array(fc.integer({min: 1, max: 12}), {minLength: 1, maxLength: 3}), {
    minLength: 1,
    maxLength: 2,
  }),
});
const source: fc.Arbitrary<Source> = fc.record(
  {
    id: hostile,
    type: fc.constantFrom<SourceType>(...sourceTypes),
    title: hostile,
    author: fc.array(name, {maxLength: 30}),
    editor: fc.array(name, {maxLength: 3}),
    director: fc.array(name, {maxLength: 2}),
    issued: date,
    accessed: date,
    edition: hostile,
    'container-title': hostile,
    'collection-title': hostile,
    publisher: hostile,
    'publisher-place': hostile,
    volume: hostile,
    issue: hostile,
    page: hostile,
    medium: hostile,
    genre: hostile,
    language: hostile,
    archive: hostile,
    URL: hostile,
    DOI: hostile,
    note: hostile,
  },
  {requiredKeys: ['id', 'type']},
);

/** Every tag that may come out, written as it comes out. */
const allowedTag =
  /^<(?:\/?(?:i|b|em|sup|sub|span|a)|span class="unknown-source"|span style="[a-z:; -]*"|a href="https?:\/\/[^"<>\s]*")>$/;

test.each(['author-date', 'note', 'numeric'] as const)(
  '%s: whatever stands in the fields of a source, only harmless tags come out',
  async (style) => {
    // One engine for many sources: building one takes longer than a hundred citations.
    const sources = fc
      .sample(source, {numRuns: 60, seed: 20260922})
      .map((entry, index) => ({...entry, id: `${entry.id}-${index}`}));
    const engine = await createCitationEngine({style, language: 'en-GB', sources});
    const bare = {locator: null, prefix: '', suffix: '', suppressAuthor: false};
    const spans = {span: {start: 0, end: 0}, keySpan: {start: 0, end: 0}};
    for (const {id: key, title = ''} of sources) {
      const rendered = engine.renderItem([
        {inText: false, citations: [{...bare, ...spans, key}]},
        {inText: true, citations: [{...bare, ...spans, key, locator: {label: 'page', value: '5'}}]},
        {inText: false, citations: [{...bare, ...spans, key, prefix: title, suffix: title}]},
        {inText: false, citations: [{...bare, ...spans, key: `unknown ${title}`}]},
      ]);
      expect(rendered.clusters.map(({html}) => html)).not.toContain('');
      const html = [
        ...rendered.clusters,
        ...rendered.notes.map((note) => ({html: note})),
        ...rendered.references,
      ]
        .map((part) => part.html)
        .join('\n');
      expect(html.match(/<[^>]*>?/g)?.filter((tag) => !allowedTag.test(tag)) ?? []).toEqual([]);
      expect(html).not.toMatch(/undefined|\[object/);
    }
    expect(engine.renderBibliography(sources.map(({id}) => id)).length).toBeGreaterThan(50);
  },
);
