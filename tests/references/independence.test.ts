import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {independentSources} from '../../src/references/independence.ts';
import type {Source} from '../../src/references/source.ts';

let count = 0;
function book(title: string, ...families: readonly string[]): Source {
  count++;
  return {id: `k${count}`, type: 'book', title, author: families.map((family) => ({family, given: 'Ann'}))};
}

describe('counted by hand', () => {
  test.each<[string, readonly Source[], number]>([
    ['none', [], 0],
    ['two authors', [book('Ribs', 'Ash'), book('Cables', 'Birch')], 2],
    ['two books of one author', [book('Ribs', 'Ash'), book('Cables', 'Ash')], 1],
    [
      'one joint work beside one of each of its authors',
      [book('Ribs', 'Ash'), book('Cables', 'Ash', 'Birch'), book('Lace', 'Birch')],
      2,
    ],
    ['two editions under other names', [book('Ribs: a handbook', 'Ash'), book('RIBS', 'Birch')], 1],
    ['accents and case', [book('Ribs', 'Bérg'), book('Lace', 'BERG')], 1],
    ['no author: the titles tell them apart', [book('Ribs'), book('Lace'), book('lace')], 2],
  ])('%s', (_, sources, independent) => {
    expect(independentSources(sources)).toBe(independent);
  });
});

test('the same as trying every choice of sources', () => {
  const source = fc.record({
    title: fc.constantFrom('Ribs', 'Lace', 'Cables', 'Edges'),
    families: fc.subarray(['Ash', 'Birch', 'Cedar', 'Elm'], {minLength: 1, maxLength: 2}),
  });
  fc.assert(
    fc.property(fc.array(source, {maxLength: 7}), (works) => {
      const tied = (a: (typeof works)[number], b: (typeof works)[number]) =>
        a.title === b.title || a.families.some((family) => b.families.includes(family));
      let best = 0;
      for (let choice = 0; choice < 2 ** works.length; choice++) {
        const chosen = works.filter((_, index) => (choice >> index) & 1);
        if (chosen.every((one, index) => chosen.slice(index + 1).every((other) => !tied(one, other))))
          best = Math.max(best, chosen.length);
      }
      expect(independentSources(works.map(({title, families}) => book(title, ...families)))).toBe(best);
    }),
  );
});
