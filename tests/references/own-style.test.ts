import {readFileSync} from 'node:fs';
import fc from 'fast-check';
import {expect, test} from 'vitest';
import {createCitationEngine} from '../../src/references/citation-engine.ts';
import {loadCitationStyle} from '../../src/references/citation-style.ts';
import {readOwnStyle} from '../../src/references/own-style.ts';
import {cluster} from './clusters.ts';

const sample = readFileSync('tests/rules/style-without-page/passing/content/sample.csl', 'utf8');

// The three are styles of the Citation Style Language project as their packages bring them.
test.each(['author-date', 'note', 'numeric'] as const)(
  'a published style is known for what it is: %s',
  async (style) => {
    expect(readOwnStyle(await loadCitationStyle(style))).toMatchObject({like: style, printsLocator: true});
  },
);

test('a style of one’s own sets citations and list', async () => {
  const own = readOwnStyle(sample);
  if (typeof own === 'string') throw new Error(own);
  const engine = await createCitationEngine({
    style: own.like,
    language: 'en-GB',
    ownStyle: own.xml,
    sources: [{id: 'edge', type: 'book', title: 'The Edge', publisher: 'Weir Press'}],
  });
  expect(engine.renderItem([cluster('@edge, p. 57')]).clusters[0]?.html).toBe('[The Edge, 57]');
  expect(engine.renderBibliography(['edge'])[0]?.html).toBe('The Edge — Weir Press');
});

test.each([
  ['', 'it is not a CSL style'],
  ['<html></html>', 'it is not a CSL style'],
  [`<!DOCTYPE style [<!ENTITY a "b">]>${sample}`, 'it has a document type, which no style needs'],
  [sample.slice(0, -12), 'it does not end with `</style>`'],
  [
    sample.replace(/ {2}<bibliography[\s\S]*<\/bibliography>/, ''),
    'it has no `<bibliography>`, which the reference lists need',
  ],
  [
    sample.replace('</info>', '<link href="http://x" rel="independent-parent"/></info>'),
    'it only names another style; take that one',
  ],
  [sample + ' '.repeat(5) + '<!--'.padEnd(400_001, 'x'), 'it has more than 400000 letters'],
])('what is no style is said to be none: %#', (text, why) => {
  expect(readOwnStyle(text)).toBe(why);
});

test('whatever the file holds, reading it never throws', () => {
  const cut = fc.tuple(fc.nat(sample.length), fc.nat(sample.length), fc.string());
  fc.assert(
    fc.property(cut, ([a, b, text]) => void readOwnStyle(sample.slice(0, a) + text + sample.slice(b))),
  );
});
