import {describe, expect, test} from 'vitest';
import {createCitationEngine} from '../../src/references/citation-engine.ts';
import type {Source} from '../../src/references/source.ts';
import {cluster} from '../references/clusters.ts';
import data from './data/works.json' with {type: 'json'};
import theirs from './data/works-by-pandoc.json' with {type: 'json'};

// Pandoc's processor is written in Haskell and shares the styles with ours, and no code. What it made of the works is
// kept as data, with how it was made; the sections of the APA Publication Manual, 7th ed., are from memory. The works are invented, and only what the two processors make of them is compared.

// JSON widens `type` to string; `sourceTypes` is checked by the library's schema, not here.
const works = data as unknown as readonly Source[];
const keys = works.map(({id}) => id);

/** Works on which the two differ, and why ours stands. */
const differing = {
  'author-date': {
    graphic1:
      'theirs does not know the term for the type of CSL 1.0.2: APA 10.14 asks for a description in brackets',
    broadcast1: 'likewise, APA 10.12',
    film1: 'likewise, APA 10.12',
    film2: 'likewise, APA 10.12',
    translated1: 'theirs has the singular `Tran.`; APA 9.47 has `Trans.`',
    rtl: 'theirs does not shorten a given name in Hebrew letters',
  },
  numeric: {rtl: 'theirs does not shorten a given name in Hebrew letters'},
  inText: {
    interview1: 'theirs lacks `personal communication`, APA 8.9',
    letter1: 'theirs lacks `personal communication`, APA 8.9',
  },
} as const;

/** One way of escaping and of italics, without links and double spaces: what the two write differently without meaning it. */
function comparable(html: string): string {
  return html
    .replace(/<\/?a\b[^>]*>/g, '')
    .replace(/<(\/?)em>/g, '<$1i>')
    .replaceAll('&#38;', '&amp;')
    .replaceAll('&#60;', '&lt;')
    .replaceAll('&#62;', '&gt;')
    .replace(/\s+/g, ' ')
    .trim();
}

function expectSame(ours: ReadonlyMap<string, string>, list: keyof typeof differing): void {
  const expected: Readonly<Record<string, string>> = theirs[list];
  for (const [key, html] of ours) {
    const [mine, other] = [comparable(html), comparable(expected[key] ?? '')];
    if (key in differing[list]) expect(mine).not.toBe(other);
    else expect(mine).toBe(other);
  }
}

describe.each([
  ['author-date', 40],
  ['numeric', 47],
] as const)('%s', (style, equal) => {
  test(`the bibliography: ${equal} works are the same`, async () => {
    const engine = await createCitationEngine({style, language: 'en-US', sources: works});
    const ours = new Map(engine.renderBibliography(keys).map(({key, html}) => [key, html]));
    // APA lists no letters and interviews of one's own: neither processor has a form for them.
    if (style === 'author-date') for (const key of ['interview1', 'letter1']) ours.delete(key);
    expect(ours.size - Object.keys(differing[style]).length).toBe(equal);
    expectSame(ours, style);
  });
});

test('author-date in the text, with a page: 46 works are the same', async () => {
  const engine = await createCitationEngine({style: 'author-date', language: 'en-US', sources: works});
  const {clusters} = engine.renderItem(keys.map((key) => cluster(`@${key}, p. 57`)));
  expectSame(new Map(keys.map((key, index) => [key, clusters[index]?.html ?? ''])), 'inText');
});
