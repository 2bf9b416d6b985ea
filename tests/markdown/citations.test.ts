import {visit} from 'unist-util-visit';
import {describe, expect, test} from 'vitest';
import {parseItem} from '../../src/markdown/parse-item.ts';

function read(markdown: string) {
  const {body, findings} = parseItem('a.md', `---\na: 1\n---\n${markdown}`);
  return {
    clusters: body.clusters.map(({cluster}) => ({
      inText: cluster.inText,
      citations: cluster.citations.map(({key, locator, prefix, suppressAuthor}) =>
        [prefix, suppressAuthor ? '-' : '', key, locator?.value].filter(Boolean).join(' '),
      ),
    })),
    body,
    findings,
  };
}

describe('a citation', () => {
  test.each([
    ['[@key, p. 57]', [false, 'key 57']],
    ['[see @a, p. 1; @b]', [false, 'see a 1', 'b']],
    ['[-@a]', [false, '- a']],
    ['word[@a].', [false, 'a']],
    ['as @a says', [true, 'a']],
    ['as @a [p. 3] says', [true, 'a 3']],
    ['@a.', [true, 'a']],
    ['(@a)', [true, 'a']],
    ['*@a*', [true, 'a']],
    ['as @a:2011-b.c, says', [true, 'a:2011-b.c']],
    ['as @a [the blue one](https://example.org) says', [true, 'a']],
    ['[as @a says](https://example.org)', [true, 'a']],
    ['| [@a, p. 2] |\n|-|', [false, 'a 2']],
    ['# [@a]', [false, 'a']],
    ['Note[^1].\n\n[^1]: As [@a, p. 2].', [false, 'a 2']],
    ['[@süß_2011]', [false, 'süß_2011']],
    ['[@a, p. 3,\nand on]', [false, 'a 3']],
    ['as @a\\_b says', [true, 'a']],
  ] as const)('stands in %j', (markdown, [inText, ...citations]) => {
    expect(read(markdown)).toMatchObject({clusters: [{inText, citations}], findings: []});
  });

  test.each([
    ['an address', 'mail a.b@example.org or c@d'],
    ['an address in brackets', '[mail a.b@example.org]'],
    ['code', '`[@a]` and\n\n    @a\n\n~~~\n@a\n~~~'],
    ['an escaped sign', '\\@a and \\[\\@a]'],
    ['a price or a length', 'two balls @ £5 and @10 cm'],
    ['a picture and its description', '![by @a](x.jpg)'.replace('by @a', 'by a@b')],
    ['a link target', '[x](https://example.org/@a)'],
    ['a bare web address', 'https://example.org/@a'],
    ['a lone sign', '@ and @@ and [@]'],
  ])('is not %s', (_, markdown) => {
    expect(read(markdown)).toMatchObject({clusters: [], findings: []});
  });

  test('that cannot be read is reported and is not counted among them', () => {
    const {clusters, findings} = read('[@a, p.] and [@b]');
    expect(findings.map(({rule}) => rule)).toEqual(['citation-form']);
    expect(clusters.map(({citations}) => citations)).toEqual([['b']]);
  });

  test('has its index in the tree', () => {
    const {body} = read('[@a, p.] [@b] @c\n\n[@d]');
    const indexes: number[] = [];
    visit(body.tree, 'citationCluster', ({index}) => {
      indexes.push(index);
    });
    expect(indexes).toEqual([-1, 0, 1, 2]);
    expect(body.clusters.map(({cluster}) => cluster.citations[0]?.key)).toEqual(['b', 'c', 'd']);
  });
});

describe('a colon in the text', () => {
  test.each(['3:20', ':smile', 'Row 1:k2tog', 'a:b[*c*]{d=e}', 'ratio 2:1'])('%s is no directive', (text) => {
    const {body} = read(`Before ${text} after.`);
    expect(body.directives).toEqual([]);
    expect(body.words).toBe(2 + text.split(' ').length);
  });
});
