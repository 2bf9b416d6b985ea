import {readFileSync} from 'node:fs';
import {expect, test} from 'vitest';
import {checkCase} from '../support/read-case.ts';

// One mistake in a binder that is right otherwise gives one finding, however many laws look at the same words.
const base = 'tests/rules/base';
const swatch = 'content/swatches/s-01.md';
const question = 'content/questions/q-01.md';
const review = 'content/reviews/b-01.md';
const textOf = (file: string) => readFileSync(`${base}/${file}`, 'utf8');

/** What is found after one change, as `rule file:line:column`. */
async function foundAfter(file: string, change: (text: string) => string): Promise<readonly string[]> {
  const text = textOf(file);
  const changed = change(text);
  expect(changed).not.toBe(text);
  const {findings} = await checkCase([base], (other) => (other === text ? changed : other));
  return findings.map(({rule, file, place}) => `${rule} ${file}:${place.line}:${place.column}`);
}

/** Every match of `pattern` in a file, with where it stands. */
function matches(file: string, pattern: RegExp) {
  const text = textOf(file);
  return [...text.matchAll(pattern)].map(({index, 0: match}) => {
    const before = text.slice(0, index).split('\n');
    const at = `${file}:${before.length}:${(before.at(-1) ?? '').length + 1}`;
    const replaceBy = (other: string) => () =>
      text.slice(0, index) + other + text.slice(index + match.length);
    return {match, at, replaceBy};
  });
}

test('deleting any one citation that is needed is one finding; one that is not needed, none', async () => {
  const found = new Map<string, readonly string[]>();
  for (const file of [swatch, question]) {
    for (const {match, replaceBy} of matches(file, /"@[^"]+"(?:, )?|\[@[^\]]+\]/g)) {
      found.set(match, await foundAfter(file, replaceBy('')));
    }
  }
  expect(Object.fromEntries(found)).toEqual({
    '"@ashdown2011, p. 57", ': [], // The text cites the same book.
    '"@orme2013, t. 3:20"': [`too-few-citations ${swatch}:2:14`],
    '[@ashdown2011, p. 57]': [], // The technique cites the same book.
    '[@lunde2016, p. 34]': [`too-few-citations ${question}:2:14`],
  });
});

test('misspelling any one citation is one finding, at its key', async () => {
  for (const file of [swatch, question, review]) {
    for (const {match, at, replaceBy} of matches(file, /(?<=@)[a-z]+\d{4}/g)) {
      const misspelt = match.replace(/(.)(.)(\d{4})$/, '$2$1$3');
      expect(await foundAfter(file, replaceBy(misspelt))).toEqual([`unknown-source ${at}`]);
    }
  }
});

test('changing any one gauge count is one finding, at that count', async () => {
  const counts = matches(swatch, /[\d.]+ over 10 cm/g);
  expect(counts).toHaveLength(6);
  for (const {match, at, replaceBy} of counts) {
    for (const off of [-3, 3, 10]) {
      const change = replaceBy(`${Number.parseFloat(match) + off} over 10 cm`);
      expect(await foundAfter(swatch, change)).toEqual([`gauge-spread ${at}`]);
    }
  }
});

test('deleting any one gauge count is one finding, at the counts that are left', async () => {
  for (const {at, replaceBy} of matches(swatch, /, [\d.]+ over 10 cm/g)) {
    const line = at.split(':')[1];
    const found = await foundAfter(swatch, replaceBy(''));
    expect(found).toEqual([expect.stringMatching(`^too-few-gauge-counts ${swatch}:${line}:`)]);
  }
});

test('changing any one edge is one finding', async () => {
  const edges = matches(swatch, /(?:top|bottom|left|right): [\d.]+ cm/g);
  expect(edges).toHaveLength(4);
  for (const {match, replaceBy} of edges) {
    const [edge] = match.split(':');
    for (const [length, rule] of [
      ['9 cm', 'piece-too-small'],
      ['14 cm', 'uneven-edges'],
    ]) {
      const found = await foundAfter(swatch, replaceBy(`${edge}: ${length}`));
      expect(found).toEqual([expect.stringMatching(`^${rule} ${swatch}:16:`)]);
    }
  }
});

test.each([swatch, question, review])('adding 50 words to %s is one finding', async (file) => {
  const found = await foundAfter(file, (text) => `${text}\n${'and then she knits '.repeat(13)}\n`);
  expect(found).toEqual([expect.stringMatching(`^too-many-words ${file}:`)]);
});

test.each(['yarn', 'needles', 'blocking', 'status', 'photos'])(
  'leaving out `%s` is one finding',
  async (field) => {
    // A field goes with the lines below that are indented or begin with a hyphen.
    const found = await foundAfter(swatch, (text) =>
      text.replace(new RegExp(`\\n${field}:.*(\\n +.*)*`), ''),
    );
    expect(found).toHaveLength(1);
  },
);
