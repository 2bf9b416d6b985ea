import fc from 'fast-check';
import {expect, test} from 'vitest';
import {setType} from '../../src/layout/set-type.ts';

test.each([
  ['4.5 mm needles', '4.5\u00a0mm needles'],
  ['20 1/2 sts over 4 in', '20½\u00a0sts over 4\u00a0in'],
  ['1/2 in wide', '½\u00a0in wide'],
  ['4" by 10\'', '4″ by 10′'],
  ['a "moss" stitch', 'a “moss” stitch'],
  ['("moss")', '(“moss”)'],
  ['"size 6" needles', '“size 6” needles'],
  ["the knitter's 'moss'", 'the knitter’s ‘moss’'],
  ['10 x 10 cm', '10\u00a0×\u00a010\u00a0cm'],
  ['2x2 rib', '2\u00a0×\u00a02 rib'],
  ['pages 6-8', 'pages 6–8'],
  ['and so on...', 'and so on…'],
  // What must stay: a cable, an id, a date, a candidate number, a word that begins like a unit.
  ['1/2 RC', '1/2 RC'],
  ['S-07', 'S-07'],
  ['2026-06-22', '2026-06-22'],
  ['FG-2-0417', 'FG-2-0417'],
  ['4 inches', '4 inches'],
  ['200 m / 100 g', '200\u00a0m / 100\u00a0g'],
])('%s is set as %s', (written, set) => {
  expect(setType(written)).toBe(set);
});

test('what is set already stays as it is', () => {
  fc.assert(
    fc.property(fc.string({unit: fc.constantFrom(...'abS 0127/x"\'-.½×–″in ')}), (text) => {
      const once = setType(text);
      expect(setType(once)).toBe(once);
    }),
  );
});
