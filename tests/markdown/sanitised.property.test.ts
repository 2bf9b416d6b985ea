import fc from 'fast-check';
import type {Root} from 'hast';
import rehypeParse from 'rehype-parse';
import {unified} from 'unified';
import {visit} from 'unist-util-visit';
import {expect, test} from 'vitest';
import {renderInline} from '../../src/markdown/render-inline.ts';
import {sanitiseFragment} from '../../src/markdown/sanitise-fragment.ts';
import {composeText} from './compose-text.ts';

/** Pieces that Markdown, HTML, directives and citations are made of, so that random texts hit their grammar. */
const pieces = fc.constantFrom(
  ...[
    'a',
    ' ',
    '\n',
    '\n\n',
    '# ',
    '- ',
    '> ',
    '1. ',
    '    ',
    '*',
    '**',
    '_',
    '`',
    '~~~',
    '```rows\n',
    '|',
    '|-|\n',
    '~~',
  ],
  ...[
    '[',
    ']',
    '(',
    ')',
    '![',
    '](',
    '[^1]',
    '[^1]: ',
    '<',
    '>',
    '</',
    '/>',
    '<!--',
    '-->',
    '\\',
    '&lt;',
    '&#106;',
    '"',
    "'",
  ],
  ...[
    '<script>',
    '</script>',
    '<img src=x onerror=alert(1)>',
    '<svg onload=alert(1)>',
    '<a href="javascript:x">',
    '<a href="//x.y">',
    '<slot name="0">',
    '<style>',
    '<iframe src=x>',
  ],
  ...[
    'javascript:alert(1)',
    'data:text/html,x',
    'vbscript:x',
    'https://example.org',
    '//x.y',
    'mailto:a@b.c',
    '#S-01',
    'a@b.example',
    '[a](javascript:alert(1))',
    '[a](//x.y)',
    '[a](../x)',
    '![a](x "y")',
    '<javascript:alert(1)>',
    '~~~a\nb\n~~~\n',
  ],
  ...[
    '::gauge',
    '::pagebreak',
    '::x{onclick=y style=z class=w id=v}',
    ':x[y]{style=z}',
    ':::box\n',
    '{',
    '}',
    '[@a, p. 1]',
    '@a',
    '[@',
    'style="x"',
  ],
);
const markdown = fc.oneof(
  fc.array(pieces, {maxLength: 50}).map((list) => list.join('')),
  fc.string({unit: 'grapheme', maxLength: 80}),
);

const bodyTags = new Set(
  'h1 h2 h3 h4 h5 h6 p blockquote pre ul ol li hr section table thead tbody tr th td em strong del code a sup br input span figure figcaption div'.split(
    ' ',
  ),
);
const bodyAttributes = new Set('href id start align type disabled checked className style'.split(' '));
const ourStyles = new Set(['break-after: page']);
const ourClasses = new Set(['rows', 'photo', 'missing', 'page-break']);
const reader = unified().use(rehypeParse, {fragment: true}).freeze();

function expectSafe(html: string, tags: ReadonlySet<string>, attributes: ReadonlySet<string>): void {
  const tree: Root = reader.parse(html);
  visit(tree, (node) => {
    expect(['root', 'element', 'text']).toContain(node.type);
    if (node.type !== 'element') return;
    expect(tags).toContain(node.tagName);
    for (const [name, value] of Object.entries(node.properties)) {
      expect(attributes).toContain(name);
      if (name === 'href') expect(String(value)).toMatch(/^(?:https?:|mailto:|#)/);
      if (name === 'style') expect(ourStyles).toContain(value);
      if (name === 'className') for (const one of [value].flat()) expect(ourClasses).toContain(one);
      if (name === 'id') expect(String(value)).toMatch(/^S-07-fn/);
    }
  });
}

test('a composed body has only allowed tags and attributes, no handler, no style or class of the author, and no link that runs', () => {
  fc.assert(
    fc.property(markdown, (text) => {
      expectSafe(composeText(text).html, bodyTags, bodyAttributes);
    }),
    {numRuns: 600},
  );
});

test('a short text has only type styles and links', () => {
  fc.assert(
    fc.property(markdown, (text) => {
      expectSafe(renderInline(text), new Set(['em', 'strong', 'del', 'code', 'a']), new Set(['href']));
    }),
    {numRuns: 300},
  );
});

test('a fragment of the citation engine has only type styles and links, and is the same when sanitised again', () => {
  const tags = new Set(['i', 'b', 'em', 'strong', 'span', 'sup', 'sub', 'a']);
  fc.assert(
    fc.property(markdown, (text) => {
      const once = sanitiseFragment(text);
      expectSafe(once, tags, new Set(['href']));
      expect(sanitiseFragment(once)).toBe(once);
    }),
    {numRuns: 300},
  );
});

test('every citation and every place that is read lies inside the file', () => {
  fc.assert(
    fc.property(markdown, (text) => {
      const {parsed} = composeText(text);
      const lines = parsed.text.split('\n');
      const {clusters, headings, images, crossReferences, links, rawHtml, directives, blocks} = parsed.body;
      const places = [
        ...[
          ...clusters,
          ...headings,
          ...images,
          ...crossReferences,
          ...links,
          ...rawHtml,
          ...directives,
          ...blocks,
        ].map(({place}) => place),
        ...blocks.flatMap(({linePlaces}) => linePlaces),
        ...clusters.flatMap(({citationPlaces}) => citationPlaces.flatMap(({whole, key}) => [whole, key])),
      ];
      for (const {line, column, endLine, endColumn} of places) {
        expect(line).toBeGreaterThan(3);
        expect(endLine).toBeGreaterThanOrEqual(line);
        expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
        expect(endColumn).toBeLessThanOrEqual((lines[endLine - 1] ?? '').length + 1);
      }
      for (const {citationPlaces} of clusters) {
        for (const {citation, key} of citationPlaces) {
          expect((lines[key.line - 1] ?? '').slice(key.column - 1, key.endColumn - 1)).toBe(citation.key);
        }
      }
    }),
    {numRuns: 400},
  );
});
