import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {clippingLine, clippingsFor, readClippings} from '../../src/model/clippings.ts';

describe('what is a clipping', () => {
  test.each([
    ['- 2026-03-14 S-07 why the slip must be knitwise', ['S-07'], null, 'why the slip must be knitwise'],
    ['- 2026-03-14 S-07, Q-03 [@a2011, p. 57] why', ['S-07', 'Q-03'], '@a2011, p. 57', 'why'],
    ['- 2026-03-14 S-07 Q-03 [@a2011]', ['S-07', 'Q-03'], '@a2011', ''],
    ['*  2026-03-14\tS-07   [@a2011; @b, t. 3:20]   why', ['S-07'], '@a2011; @b, t. 3:20', 'why'],
    ['+ 2026-03-14 S-07', ['S-07'], null, ''],
  ])('%s', (line, ids, source, words) => {
    const {clippings, faults} = readClippings(`# Mine\n\n${line}\n`);
    expect(faults).toEqual([]);
    expect(clippings).toMatchObject([
      {on: '2026-03-14', ids, source, words, place: {line: 3, column: line.search(/\d/) + 1}},
    ]);
  });

  test('indented lines go on with the words; other text is the candidate’s own', () => {
    const text =
      '\uFEFFnotes\r\n- 2026-03-14 S-07 why\r\n  it must be\r\n\r\n  still?\r\nbut not this\r\n- just a list\r\n';
    const {clippings, faults} = readClippings(text);
    expect(faults).toEqual([]);
    expect(clippings.map(({words}) => words)).toEqual(['why it must be']);
  });
});

test.each([
  ['- 2026-03-14 why the slip must be knitwise', 'clipping-form', 3],
  ['- 2026-03-14 S-07 [@a2011, p. 57 no end', 'clipping-form', 3],
  ['- 2026-03-14 S-07 [@a2011, p.] nothing', 'citation-form', 28],
])('what cannot be read is said where it stands: %s', (line, rule, column) => {
  const {faults} = readClippings(line);
  expect(faults.map((fault) => [fault.rule, fault.place.line, fault.place.column])).toEqual([
    [rule, 1, column],
  ]);
});

test('whatever the file holds, reading never throws, and what `clip` writes is read back', () => {
  fc.assert(fc.property(fc.string({unit: 'binary'}), (text) => void readClippings(text)));
  const ids = fc.uniqueArray(fc.constantFrom('S-07', 'Q-03', 'ABCD-123'), {minLength: 1});
  const words = fc
    .string()
    .map((text) => text.replace(/\s+/g, ' ').trim())
    .filter((text) => !text.startsWith('['));
  fc.assert(
    fc.property(ids, fc.constantFrom(null, '@a2011, p. 57'), words, (chosen, source, kept) => {
      const {clippings} = readClippings(clippingLine({on: '2026-03-14', ids: chosen, source, words: kept}));
      expect(clippings).toMatchObject([{ids: chosen, source, words: kept}]);
    }),
  );
});

test('what was kept for one item', () => {
  const {clippings} = readClippings('- 2026-03-14 S-07 a\n- 2026-03-15 S-08, S-07 b\n- 2026-03-16 S-08 c\n');
  expect(clippingsFor(clippings, 'S-07').map(({words}) => words)).toEqual(['a', 'b']);
});
