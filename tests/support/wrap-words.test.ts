import fc from 'fast-check';
import {expect, test} from 'vitest';
import {wrapWords} from '../../src/support/wrap-words.ts';

const word = fc.stringMatching(/^[a-z·é]{1,9}$/);

test('no word is lost, no line is too long, and no word could have stood on the line before', () => {
  fc.assert(
    fc.property(fc.array(word, {minLength: 1}), fc.integer({min: 1, max: 40}), (words, width) => {
      const lines = wrapWords(words.join(' '), width);
      expect(lines.join(' ').split(' ')).toEqual(words);
      lines.forEach((line, index) => {
        if (line.includes(' ')) expect([...line].length).toBeLessThanOrEqual(width);
        const next = lines[index + 1]?.split(' ')[0];
        if (next !== undefined) expect([...`${line} ${next}`].length).toBeGreaterThan(width);
      });
    }),
  );
});

test('lines behind the first are indented, and no longer for that', () => {
  expect(wrapWords('a long note cut twice', 8, 2)).toEqual(['a long', '  note', '  cut', '  twice']);
});

test.each([
  ['one line', 20, ['one line']],
  ['cut here and there', 8, ['cut here', 'and', 'there']],
  ['a wordthatistoolong b', 5, ['a', 'wordthatistoolong', 'b']],
  ['', 5, ['']],
])('%s in %i', (text, width, lines) => {
  expect(wrapWords(text, width)).toEqual(lines);
});
