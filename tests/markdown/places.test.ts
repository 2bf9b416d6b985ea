import {describe, expect, test} from 'vitest';
import type {Place} from '../../src/diagnostics/finding.ts';
import {parseItem} from '../../src/markdown/parse-item.ts';
import {savedAs, textAt} from '../support/text-at.ts';

const front = '---\nrequirement: S-07\ntitle: Überzüge\n---\n';
const body = `
## Ein *Maß* 𝒜

Worked as ssk [see @ashdown2011, p. 57;
@lunde2016, fig. 3]. As @lunde2016 [p. 3] says: 𝒜 [@x, p. 1].

![front of it](s07.jpg "Front")
[](#S-01) and [the first](#S-02 "t"), [web](https://example.org), [ref][r] <https://example.org/a>

~~~rows
Row 1 (RS): K2.

  go on &amp; on
~~~

::gauge{when=after}

<b>bold</b> text

[r]: #S-03
`;

const inQuote = body
  .trim()
  .split('\n')
  .map((line) => `> ${line}`.trimEnd())
  .join('\n');
const inList = body
  .trim()
  .split('\n')
  .map((line, index) => (index === 0 ? `- ${line}` : line && `  ${line}`))
  .join('\n');
const inBoth = inList
  .split('\n')
  .map((line) => `> ${line}`.trimEnd())
  .join('\n');

// A line that a citation runs over keeps its `> ` in the file.
const joined = (text: string) => text.replace(/\n[\s>]*/g, '\n');

describe.each([
  ['plain', body],
  ['in a quote', inQuote],
  ['in a list', inList],
  ['in a list in a quote', inBoth],
])('%s', (_, markdown) => {
  describe.each(savedAs)('saved with %s', (_, save) => {
    const file = save(front + markdown);
    const {body: read, findings} = parseItem('content/a.md', file);
    const at = (place: Place) => joined(textAt(file, place));

    test('nothing is reported', () => {
      expect(findings).toEqual([]);
    });

    test('the text at each place is what was found there', () => {
      expect(read.headings.map(({place, text, depth}) => [at(place), text, depth])).toEqual([
        ['## Ein *Maß* 𝒜', 'Ein Maß 𝒜', 2],
      ]);
      expect(read.clusters.map(({place}) => at(place))).toEqual([
        '[see @ashdown2011, p. 57;\n@lunde2016, fig. 3]',
        '@lunde2016 [p. 3]',
        '[@x, p. 1]',
      ]);
      expect(
        read.clusters.flatMap(({citationPlaces}) =>
          citationPlaces.map(({whole, key}) => [at(whole), at(key)]),
        ),
      ).toEqual([
        ['see @ashdown2011, p. 57', 'ashdown2011'],
        ['@lunde2016, fig. 3', 'lunde2016'],
        ['@lunde2016 [p. 3]', 'lunde2016'],
        ['@x, p. 1', 'x'],
      ]);
      expect(read.images.map(({place, ...image}) => [at(place), image])).toEqual([
        ['![front of it](s07.jpg "Front")', {file: 's07.jpg', description: 'front of it', title: 'Front'}],
      ]);
      expect(read.crossReferences.map(({place, target}) => [at(place), target])).toEqual([
        ['[](#S-01)', 'S-01'],
        ['[the first](#S-02 "t")', 'S-02'],
        ['[ref][r]', 'S-03'],
      ]);
      expect(read.links.map(({place, url}) => [at(place), url])).toEqual([
        ['[web](https://example.org)', 'https://example.org'],
        ['<https://example.org/a>', 'https://example.org/a'],
      ]);
      expect(read.rawHtml.map(({place, text}) => [at(place), text])).toEqual([
        ['<b>', '<b>'],
        ['</b>', '</b>'],
      ]);
      expect(read.directives.map(({place, ...directive}) => [at(place), directive])).toEqual([
        ['::gauge{when=after}', {name: 'gauge', attributes: {when: 'after'}}],
      ]);
    });

    test('each line of a block stands where it says', () => {
      const [block] = read.blocks;
      expect(read.blocks).toHaveLength(1);
      expect(block?.text.split('\n')).toEqual(['Row 1 (RS): K2.', '', '  go on &amp; on']);
      expect(block?.linePlaces.map((place) => textAt(file, place))).toEqual(block?.text.split('\n'));
      expect(block?.language).toBe('rows');
    });
  });
});

test('a block indented with tabs is shown from its first letter', () => {
  const file = `${front}- a\n\n\t~~~rows\n\t  Row 1: K2.\n\t~~~\n`;
  const [block] = parseItem('a.md', file).body.blocks;
  expect(block?.linePlaces.map((place) => textAt(file, place).trim())).toEqual(['Row 1: K2.']);
});

test('front matter and text count lines together', () => {
  const file = `${front}\nrequirement\n[@a b @c]`;
  const {yaml, findings} = parseItem('a.md', file);
  expect(yaml.places.value(['title'])).toMatchObject({line: 3, column: 8});
  expect(findings.map(({rule, place}) => [rule, place.line, textAt(file, place)])).toEqual([
    ['citation-form', 7, '@c'],
  ]);
});
