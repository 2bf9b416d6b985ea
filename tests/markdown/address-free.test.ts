import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import spec from 'commonmark-spec';
import fc from 'fast-check';
import {expect, test} from 'vitest';
import {mayHoldAddress} from '../../src/markdown/plugins/remark-without-addresses.ts';
import {markdownParser, markdownParserFor} from '../../src/markdown/processor.ts';
import {root} from '../support/run-cli.ts';

// Texts that cannot hold a bare address are parsed without GFM's search for them. Nothing else may differ, places included.

function sameTree(text: string): void {
  expect(markdownParserFor(text).parse(text)).toEqual(markdownParser.parse(text));
}

const content = path.join(root, 'content');
const items = readdirSync(content, {recursive: true, encoding: 'utf8'})
  .filter((file) => file.endsWith('.md'))
  .map((file) => readFileSync(path.join(content, file), 'utf8'));

test.each([
  ['see www.example.org'],
  ['see WWW.example.org'],
  ['see www\\.example.org'],
  ['see https://example.org'],
  ['see http\\://example.org'],
  ['ann@example.org'],
  ['ann\\@example.org'],
  ['ann+_@example.org'],
  ['ann&#64;example.org'],
])('GFM makes a link of %j, and it is asked', (text) => {
  expect(JSON.stringify(markdownParser.parse(text))).toContain('"link"');
  expect(mayHoldAddress(text)).toBe(true);
});

test.each([
  ['knitted as ssk [@ashdown2011, p. 57] and @lunde2016 [p. 3]'],
  ['Row 1 (RS): K2, *yo, k2tog; rep from * to end.'],
  ['worked at @ 4 in, then w&t, and so on'],
])('%j holds none', (text) => {
  expect(mayHoldAddress(text)).toBe(false);
  sameTree(text);
});

test('every item of the worked example gives the same tree', () => {
  expect(items.some((text) => !mayHoldAddress(text.replace(/^---\n[\s\S]*?\n---\n/, '')))).toBe(true);
  for (const text of items) sameTree(text.replace(/^---\n[\s\S]*?\n---\n/, ''));
});

test('every example of CommonMark gives the same tree', () => {
  for (const {markdown} of spec.tests) sameTree(markdown);
});

test('so does whatever is put together from pieces that matter', () => {
  const piece = fc.constantFrom(
    ...[
      'ann',
      'w',
      'www',
      'h',
      'http',
      'https',
      '.',
      ':',
      '/',
      '//',
      '@',
      '\\',
      '-',
      '+',
      '_',
      ' ',
      '\n',
      '\n\n',
    ],
    ...[
      '[',
      ']',
      '(',
      ')',
      '*',
      '**',
      '~~',
      '~',
      '`',
      '<',
      '>',
      '#',
      '|',
      '|-|',
      ':::',
      '::',
      '!',
      '^',
      '[^1]: ',
      '- ',
    ],
    ...[
      'example',
      '.org',
      'mailto:',
      'xmpp:',
      '&#64;',
      '&amp;',
      'é',
      '[@key, p. 3]',
      '\t',
      'W',
      'H',
      '3',
      '[x] ',
    ],
  );
  fc.assert(
    fc.property(fc.array(piece, {maxLength: 14}), (pieces) => sameTree(pieces.join(''))),
    {numRuns: 500},
  );
});
