import {expect, test} from 'vitest';
import {parseCitations} from '../../src/references/citation.ts';

/** text → what each citation says: `prefix | -key | label value | suffix`, empty parts as a dash. */
const readings: readonly (readonly [text: string, ...citations: string[]])[] = [
  ['@ashdown2011', '– | ashdown2011 | – | –'],
  ['@ashdown2011, p. 57', '– | ashdown2011 | page 57 | –'],
  ['@ashdown2011 p. 57', '– | ashdown2011 | page 57 | –'],
  ['@ashdown2011, 57', '– | ashdown2011 | page 57 | –'],
  ['@ashdown2011, p57', '– | ashdown2011 | page 57 | –'],
  ['@ashdown2011, P. 57', '– | ashdown2011 | page 57 | –'],
  ['@ashdown2011, page 57', '– | ashdown2011 | page 57 | –'],
  ['@ashdown2011, pp. 112-114', '– | ashdown2011 | page 112–114 | –'],
  ['@ashdown2011, pp. 112--114', '– | ashdown2011 | page 112–114 | –'],
  ['@ashdown2011, pp. 112 – 114', '– | ashdown2011 | page 112–114 | –'],
  ['@ashdown2011, 112—114', '– | ashdown2011 | page 112–114 | –'],
  ['@ashdown2011, pp. 57, 60 and 62-64', '– | ashdown2011 | page 57, 60, 62–64 | –'],
  ['@ashdown2011, p. 57, 3 swatches', '– | ashdown2011 | page 57 | , 3 swatches'],
  ['@ashdown2011, p. 57ff.', '– | ashdown2011 | page 57ff. | –'],
  ['@ashdown2011, p. 57 for ribs', '– | ashdown2011 | page 57 | for ribs'],
  ['@ashdown2011, xii', '– | ashdown2011 | page xii | –'],
  ['@ashdown2011, pp. xii-xv', '– | ashdown2011 | page xii–xv | –'],
  ['@ashdown2011, p. A3', '– | ashdown2011 | page A3 | –'],
  ['@ashdown2011, ch. 3', '– | ashdown2011 | chapter 3 | –'],
  ['@ashdown2011, chap. IV', '– | ashdown2011 | chapter IV | –'],
  ['@ashdown2011, fig. 2a', '– | ashdown2011 | figure 2a | –'],
  ['@ashdown2011, figs. 2.1 & 2.3', '– | ashdown2011 | figure 2.1, 2.3 | –'],
  ['@lunde2016, t. 3:20', '– | lunde2016 | time 3:20 | –'],
  ['@lunde2016, t. 1:03:20-1:05:01', '– | lunde2016 | time 1:03:20–1:05:01 | –'],
  ['@ashdown2011, vol. 2', '– | ashdown2011 | volume 2 | –'],
  ['@ashdown2011, vol. 2, p. 57', '– | ashdown2011 | volume 2 | , p. 57'],
  ['@ashdown2011, no. 4', '– | ashdown2011 | issue 4 | –'],
  ['@ashdown2011, § 4', '– | ashdown2011 | section 4 | –'],
  ['@ashdown2011, §§ 4-6', '– | ashdown2011 | section 4–6 | –'],
  ['@ashdown2011, sec. 4', '– | ashdown2011 | section 4 | –'],
  ['@ashdown2011, plate IV', '– | ashdown2011 | plate IV | –'],
  ['@ashdown2011, plate B', '– | ashdown2011 | plate B | –'],
  ['@ashdown2011, table 3', '– | ashdown2011 | table 3 | –'],
  ['@ashdown2011, para. 12', '– | ashdown2011 | paragraph 12 | –'],
  ['@ashdown2011, ¶ 12', '– | ashdown2011 | paragraph 12 | –'],
  ['see @ashdown2011', 'see | ashdown2011 | – | –'],
  ['see also @ashdown2011, p. 57, and onward', 'see also | ashdown2011 | page 57 | , and onward'],
  ['@ashdown2011, p. 57 (my emphasis)', '– | ashdown2011 | page 57 | (my emphasis)'],
  ['@ashdown2011 and others', '– | ashdown2011 | – | and others'],
  ['@ashdown2011, chapter on ribs', '– | ashdown2011 | – | , chapter on ribs'],
  ['@ashdown2011, reprinted 1998', '– | ashdown2011 | – | , reprinted 1998'],
  ['@ashdown2011, mix', '– | ashdown2011 | – | , mix'],
  ['-@ashdown2011, p. 57', '– | -ashdown2011 | page 57 | –'],
  ['see -@ashdown2011', 'see | -ashdown2011 | – | –'],
  ['@a, p. 5; see @b, ch. 2; @c', '– | a | page 5 | –', 'see | b | chapter 2 | –', '– | c | – | –'],
  ['  @a ;@b  ', '– | a | – | –', '– | b | – | –'],
  ['@ashdown2011 [p. 57]', '– | ashdown2011 | page 57 | –'],
  ['-@ashdown2011 [p. 57; see @lunde2016]', '– | -ashdown2011 | page 57 | –', 'see | lunde2016 | – | –'],
  ['@haldane-roe:2025.b, 4', '– | haldane-roe:2025.b | page 4 | –'],
  ['@größe_1, 4', '– | größe_1 | page 4 | –'],
  ['@ashdown2011.', '– | ashdown2011 | – | .'],
  ['write to guild@example.org or @ashdown2011', 'write to guild@example.org or | ashdown2011 | – | –'],
];

test.each(readings)('%s', (text, ...expected) => {
  const result = parseCitations(text);
  const found = result.ok
    ? result.value.map(({prefix, key, locator, suffix, suppressAuthor}) =>
        [
          prefix || '–',
          suppressAuthor ? `-${key}` : key,
          locator ? `${locator.label} ${locator.value}` : '–',
          suffix || '–',
        ].join(' | '),
      )
    : result.problems;
  expect(found).toEqual(expected);
});

/** text → for each problem the text it points at, and words that its message or hint must hold. */
type Expected = readonly [at: string, says: string];
const mistakes: readonly (readonly [text: string, ...problems: Expected[]])[] = [
  ['', ['', 'A citation is empty']],
  ['@', ['@', 'without the key']],
  ['see @, p. 57', ['@', 'without the key']],
  ['ashdown2011, p. 57', ['ashdown2011, p. 57', 'names no source']],
  ['guild@example.org', ['guild@example.org', 'names no source']],
  ['@a; ', ['; ', 'A citation is empty']],
  ['; @a', [';', 'A citation is empty']],
  ['@a;;@b', [';;', 'A citation is empty']],
  ['@a, p.', ['p.', 'has no number after it']],
  ['@a, p. ; @b', ['p.', 'has no number after it']],
  ['@a, fig. overleaf', ['fig.', 'has no number after it']],
  ['@a, pg. 57', ['pg.', 'Write `p.` if you mean the page.']],
  ['@a, pgae 57', ['pgae', 'Write `p.` if you mean the page.']],
  ['@a, cap. 3', ['cap.', 'Write `ch.` if you mean the chapter.']],
  ['@a, figr. 3', ['figr.', 'Write `fig.` if you mean the figure.']],
  ['@a, xyz. 3', ['xyz.', 'Write `p.`, `ch.`, `fig.`']],
  ['@a, 3:20', ['3:20', 'Write `t. 3:20` for a time']],
  ['@a, t. 3', ['3', 'not a time in minutes and seconds']],
  ['@a, t. 3:75', ['3:75', 'not a time in minutes and seconds']],
  ['@a, t. 3:20-4', ['3:20-4', 'not a time in minutes and seconds']],
  ['@a, p. 5, see @b', ['@b', 'Put a semicolon between two citations']],
  ['@a [p.]', ['p.', 'has no number after it']],
  ['@, 1; @b, q. 2; @c', ['@', 'without the key'], ['q.', 'is not a label']],
];

test.each(mistakes.map(([text, ...expected]) => ({text, expected})))(
  '$text is reported at its place',
  ({text, expected}) => {
    const result = parseCitations(text);
    const problems = result.ok ? [] : result.problems;
    expect(problems.map(({span}) => text.slice(span.start, span.end))).toEqual(expected.map(([at]) => at));
    for (const [index, [, says]] of expected.entries()) {
      expect(`${problems[index]?.message}. ${problems[index]?.hint}`).toContain(says);
    }
  },
);

test('spans cover the citation and its key, brackets of the in-text form included', () => {
  const spansOf = (text: string) => {
    const result = parseCitations(text);
    return result.ok
      ? result.value.flatMap(({span, keySpan}) =>
          [span, keySpan].map(({start, end}) => text.slice(start, end)),
        )
      : [];
  };
  expect(spansOf(' see -@a1, p. 57, on ; @b ')).toEqual(['see -@a1, p. 57, on', 'a1', '@b', 'b']);
  expect(spansOf('@a1 [p. 57] ')).toEqual(['@a1 [p. 57]', 'a1']);
  expect(spansOf('@a1 [p. 57; @b]')).toEqual(['@a1 [p. 57', 'a1', '@b]', 'b']);
});
