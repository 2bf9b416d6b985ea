import type {Element} from 'hast';
import {describe, expect, test} from 'vitest';
import {escapeHtml} from '../../src/markdown/escape-html.ts';
import {renderComputedTable} from '../../src/markdown/render-computed-table.ts';
import {renderInline} from '../../src/markdown/render-inline.ts';
import {sanitiseFragment} from '../../src/markdown/sanitise-fragment.ts';
import {textAt} from '../support/text-at.ts';
import {composeText} from './compose-text.ts';

const table: Element = {
  type: 'element',
  tagName: 'figure',
  properties: {className: ['computed'], style: 'color: red'},
  children: [{type: 'text', value: '<20 sts>'}],
};
const photo = {
  source: 'data:image/png;base64,AA==',
  description: 'Front',
  widthMillimetres: 80,
  heightMillimetres: 60,
};

describe('text', () => {
  test.each([
    ['# One\n\n## Two', '<h2>One</h2>\n<h3>Two</h3>'],
    ['## Two\n\n### Three', '<h2>Two</h2>\n<h3>Three</h3>'],
    ['one ~two~ ~~three~~', '<p>one ~two~ <del>three</del></p>'],
    ['a:b and :smile at 3:20', '<p>a:b and :smile at 3:20</p>'],
    ['a :b[*c*]{d=e} f', '<p>a :b[<em>c</em>]{d=e} f</p>'],
    ['<b style="x">bold</b>', '<p>bold</p>'],
    ['<script>alert(1)</script>', ''],
    ['[x](javascript:alert(1)) [y](../z.md) [](a.md)', '<p>x y a.md</p>'],
    [
      '[x](HTTPS://example.org)',
      '<p><a href="https://example.org">x <small>(https://example.org)</small></a></p>',
    ],
    ['<https://example.org/a>', '<p><a href="https://example.org/a">https://example.org/a</a></p>'],
    ['[Example.org](https://example.org/)', '<p><a href="https://example.org/">Example.org</a></p>'],
    [
      '[*x*][y]\n\n[y]: mailto:x@example.org',
      '<p><a href="mailto:x@example.org"><em>x</em> <small>(x@example.org)</small></a></p>',
    ],
    ['- [x] done', '<ul>\n<li><input type="checkbox" checked disabled> done</li>\n</ul>'],
    ['&lt;b> &amp; "x"', '<p>&#x3C;b> &#x26; “x”</p>'],
    ['3. three\n4. four', '<ol start="3">\n<li>three</li>\n<li>four</li>\n</ol>'],
  ])('%j', (markdown, html) => {
    expect(composeText(markdown).html).toBe(html);
  });

  test('the tree of the item stays as it was', () => {
    const {parsed} = composeText('# A "b" [@c]\n\n![d](e.jpg)\n\n::gauge\n');
    const again = composeText('# A "b" [@c]\n\n![d](e.jpg)\n\n::gauge\n').parsed;
    expect(parsed.body.tree).toEqual(again.body.tree);
    expect(JSON.stringify(parsed.body.tree)).toContain('A \\"b\\"');
  });

  test('footnotes of two items have different ids', () => {
    const {html} = composeText('text[^1]\n\n[^1]: note');
    expect([...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id)).toEqual(['S-07-fnref-1', 'S-07-fn-1']);
    expect([...html.matchAll(/href="#([^"]*)"/g)].map(([, id]) => id)).toEqual(['S-07-fn-1', 'S-07-fnref-1']);
  });

  test('rows are a list, each with its label', () => {
    const rows = 'cast on: 29\n\nRow 1 (RS): K2, *yo; rep from *,\n  k2.\nRep Rows 1 and 2.\n<b>: x';
    expect(composeText(`~~~rows\n${rows}\n~~~`).html).toBe(
      '<ul class="rows"><li><strong>cast on:</strong> 29</li>' +
        '<li><strong>Row 1 (RS):</strong> K2, *yo; rep from *, k2.</li>' +
        '<li>Rep Rows 1 and 2.</li><li><strong>&#x3C;b>:</strong> x</li></ul>',
    );
  });

  test('other blocks are printed as written', () => {
    expect(composeText('~~~chart\n<->\n~~~').html).toBe('<pre><code>&#x3C;->\n</code></pre>');
  });
});

describe('computed tables', () => {
  test('stand where the directive stood, with the attributes it had', () => {
    const asked: unknown[] = [];
    const {html, findings} = composeText('a\n\n::gauge{of=S-01 when="after blocking"}\n\nb', {
      table: (name, attributes) => {
        asked.push([name, attributes]);
        return {content: [table], problems: []};
      },
    });
    expect(asked).toEqual([['gauge', {of: 'S-01', when: 'after blocking'}]]);
    expect(html).toBe(
      '<p>a</p>\n<figure class="computed" style="color: red">&#x3C;20 sts></figure>\n<p>b</p>',
    );
    expect(findings).toEqual([]);
  });

  test('that cannot be computed are findings at the directive', () => {
    const {findings, parsed} = composeText('::gauge\n\n> ::sise\n\n:::box\ntext\n:::', {
      table: (name) =>
        name === 'gauge' ? {content: [], problems: [{message: 'nothing counted', hint: 'Count.'}]} : null,
    });
    expect(
      findings.map(({rule, place, message}) => [rule, textAt(parsed.text, place), message]).sort(),
    ).toEqual([
      ['computed-table', '::gauge', 'nothing counted'],
      ['unknown-directive', ':::box\ntext\n:::', '`box` is not something that can be computed here'],
      ['unknown-directive', '::sise', '`sise` is not something that can be computed here'],
    ]);
  });

  test('a page break is one of ours', () => {
    const {html, findings} = composeText('a\n\n::pagebreak\n\nb');
    expect(html).toContain('<div class="page-break" style="break-after: page"></div>');
    expect(findings).toEqual([]);
  });

  test('a table by itself is written out with its text escaped', () => {
    expect(renderComputedTable({content: [table], problems: []})).toBe(
      '<figure class="computed" style="color: red">&#x3C;20 sts></figure>',
    );
  });
});

describe('citations', () => {
  test('become what the engine made of them, sanitised', () => {
    const {html} = composeText('One [@a], *two [@b]*, three @c.', {
      citations: [
        '(<i>A</i>)',
        '<b onclick="x">B</b><img src=x>',
        '<a href="https://example.org" class="x">C</a>',
      ],
    });
    expect(html).toBe(
      '<p>One (<i>A</i>), <em>two <b>B</b></em>, three <a href="https://example.org">C</a>.</p>',
    );
  });

  test('that could not be read are printed as written, and the others keep their numbers', () => {
    const {html} = composeText('[@a, p.] [@b] @c [p.]', {citations: ['B']});
    expect(html).toBe('<p>[@a, p.] B @c [p.]</p>');
  });
});

describe('cross-references', () => {
  const crossReference = (id: string) =>
    id === 'S-01' ? {anchor: 'sheet-S-01', number: 'S-01', title: 'Garter <stitch>', leaf: 'S-01 · 1'} : null;

  test.each([
    ['[](#S-01)', '<a href="#sheet-S-01">S-01 Garter &#x3C;stitch> (leaf\u00A0S-01\u00A0·\u00A01)</a>'],
    ['[the *first*](#S-01)', '<a href="#sheet-S-01">the <em>first</em> (leaf\u00A0S-01\u00A0·\u00A01)</a>'],
    ['[S-01](#S-01)', '<a href="#sheet-S-01">S-01\u00A0·\u00A01</a>'],
    ['[S-02](#S-01)', '<a href="#sheet-S-01">S-02 (leaf\u00A0S-01\u00A0·\u00A01)</a>'],
    ['[the first][r]\n\n[r]: #S-01', '<a href="#sheet-S-01">the first (leaf\u00A0S-01\u00A0·\u00A01)</a>'],
    ['[](#S-99)', '#S-99'],
    ['[*it*](#S-99)', '<em>it</em>'],
  ])('%s', (markdown, html) => {
    expect(composeText(markdown, {crossReference}).html).toBe(`<p>${html}</p>`);
  });
});

describe('pictures', () => {
  const image = (alt: string) =>
    `<img src="data:image/png;base64,AA==" alt="${alt}" style="width: 80mm; height: 60mm">`;

  test.each([
    [
      'by themselves are figures',
      '![The "front"](a.jpg)',
      `<figure class="photo" style="width: 80mm">${image('The &#x22;front&#x22;')}<figcaption>The “front”</figcaption></figure>`,
    ],
    [
      'have their title for a caption',
      '![f](a.jpg "Right side")',
      `<figure class="photo" style="width: 80mm">${image('f')}<figcaption>Right side</figcaption></figure>`,
    ],
    [
      'in a paragraph stand below it',
      'See ![f](a.jpg) here.',
      `<p>See  here.</p>\n<figure class="photo" style="width: 80mm">${image('f')}<figcaption>f</figcaption></figure>`,
    ],
    [
      'may be named elsewhere',
      '![f][r]\n\n[r]: a.jpg "T"',
      `<figure class="photo" style="width: 80mm">${image('f')}<figcaption>T</figcaption></figure>`,
    ],
    ['in a heading have no caption', '## A ![f](a.jpg)', `<h2>A ${image('f')}</h2>`],
  ])('%s', (_, markdown, html) => {
    expect(composeText(markdown, {photo: (file) => (file === 'a.jpg' ? photo : null)}).html).toBe(html);
  });

  test('that cannot be printed leave a note', () => {
    expect(composeText('![f](https://example.org/x.png)').html).toBe(
      '<figure class="photo"><span class="missing">(the picture https://example.org/x.png cannot be shown)</span>' +
        '<figcaption>f</figcaption></figure>',
    );
  });
});

describe('short texts', () => {
  test.each([
    ['a *b* `c` "d" 5" <b>x</b>', 'a <em>b</em> <code>c</code> “d” 5″ x'],
    ['one\n\n- two\n\n# three', 'one three'],
    ['[@key, p. 5] ![p](q.jpg)', '[@key, p. 5] '],
    ['[x](javascript:y) [z](https://example.org)', 'x <a href="https://example.org">z</a>'],
  ])('%j', (markdown, html) => {
    expect(renderInline(markdown)).toBe(html);
  });

  test.each([
    ['<div class="csl-entry">A <i>B</i></div>', 'A <i>B</i>'],
    ['<span style="font-variant: small-caps">A</span>', '<span>A</span>'],
    ['<script>x</script><style>y</style>a', 'a'],
    [
      '<a href="javascript:x">a</a><a href="https://example.org" onclick="y">b</a>',
      '<a>a</a><a href="https://example.org">b</a>',
    ],
    ['A &#38; B &lt;i>', 'A &#x26; B &#x3C;i>'],
  ])('of the citation engine: %j', (html, safe) => {
    expect(sanitiseFragment(html)).toBe(safe);
  });

  test('plain text is escaped for content and attributes', () => {
    expect(escapeHtml(`<a href="x" title='y'>&`)).toBe('&lt;a href=&quot;x&quot; title=&#39;y&#39;&gt;&amp;');
  });
});
