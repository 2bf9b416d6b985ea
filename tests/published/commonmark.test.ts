import spec from 'commonmark-spec';
import type {Element, ElementContent, Nodes, Root} from 'hast';
import {toString as textOf} from 'mdast-util-to-string';
import rehypeParse from 'rehype-parse';
import rehypeStringify from 'rehype-stringify';
import {unified} from 'unified';
import {expect, test} from 'vitest';
import {composeText} from '../markdown/compose-text.ts';

/*
 * Source: the CommonMark specification, version 0.31.2, https://spec.commonmark.org/0.31.2/, all 652 examples, through the whole
 * processor. Examples that show what is not printed by design are left out, by what their input or expected output holds,
 * not by whether they pass. In the others the expected output is changed as `designed` says.
 */

interface Example {
  readonly number: number;
  readonly markdown: string;
  readonly html: string;
}

const reasons: readonly {readonly reason: string; readonly applies: (example: Example) => boolean}[] = [
  {
    reason: 'HTML in the text is not printed',
    applies: ({markdown, html}) =>
      /<(?:[a-z][\w-]*(?=[\s/>])|\/[a-z]|[!?])/i.test(markdown) ||
      /<(?!\/?(?:a|p|h\d|em|strong|code|pre|ul|ol|li|blockquote|img|hr|br)\b)/.test(html),
  },
  {reason: 'a picture is printed from the photos folder only', applies: ({html}) => html.includes('<img')},
  {
    reason: 'quotation marks, dashes and dots are set as type',
    applies: ({html}) => /"|&quot;|'|(?<!-)--(?!--)|---|\.\.\.|(?<= )-(?= )/.test(wordsOf(html)),
  },
  {
    reason: 'bare addresses are links, as in GFM',
    applies: ({number}) => [602, 608, 611, 612].includes(number),
  },
];

const examples: readonly Example[] = spec.tests.map(({number, markdown, html}) => ({
  number,
  markdown: markdown.replaceAll('→', '\t'),
  html: html.replaceAll('→', '\t'),
}));
const reasonFor = (example: Example) => reasons.find(({applies}) => applies(example))?.reason ?? null;
const printed = examples.filter((example) => reasonFor(example) === null);

test('the examples left out are as many as were looked at, for the reasons given', () => {
  const counts = new Map<string, number>();
  for (const example of examples) {
    const reason = reasonFor(example) ?? 'printed';
    counts.set(reason, (counts.get(reason) ?? 0) + 1);
  }
  expect(examples).toHaveLength(652);
  expect(Object.fromEntries(counts)).toEqual({
    printed: 523,
    'HTML in the text is not printed': 85,
    'a picture is printed from the photos folder only': 21,
    'quotation marks, dashes and dots are set as type': 19,
    'bare addresses are links, as in GFM': 4,
  });
});

test.each(printed.map((example) => [example.number, example] as const))(
  'example %i',
  (_, {markdown, html}) => {
    expect(canonical(composeText(markdown).html)).toBe(canonical(html, designed));
  },
);

/** What is printed otherwise than CommonMark's examples show, by design. */
function designed(tree: Root): void {
  const hasTopHeading = html(tree).includes('<h1');
  const change = (node: Nodes): void => {
    if (!('children' in node)) return;
    node.children = node.children.flatMap((child): ElementContent[] => {
      if (child.type === 'doctype') return [];
      change(child);
      return child.type === 'element' ? changed(child) : [child];
    });
  };
  const changed = (element: Element): ElementContent[] => {
    // The sheet has the only first-level heading.
    if (hasTopHeading && /^h[1-5]$/.test(element.tagName))
      element.tagName = `h${Number(element.tagName.at(1)) + 1}`;
    // Classes are ours alone, and a title cannot be read on paper.
    const {className, title, ...properties} = element.properties;
    element.properties = properties;
    if (element.tagName !== 'a') return [element];
    // A link that leads nowhere from paper keeps its words only, or its address when it has none.
    const href = String(element.properties.href ?? '');
    if (!/^(?:https?:|mailto:)/i.test(href)) {
      return element.children.length > 0 ? element.children : [{type: 'text', value: href}];
    }
    element.properties = {href: href.replace(/^MAILTO:/, 'mailto:')};
    // Paper cannot be clicked: the address stands behind words that are not the address.
    const words = textOf(element);
    if (!decodeURI(href).toLowerCase().endsWith(words.toLowerCase())) {
      const address: ElementContent = {type: 'text', value: `(${href})`};
      const small: Element = {type: 'element', tagName: 'small', properties: {}, children: [address]};
      element.children.push({type: 'text', value: ' '}, small);
    }
    return [element];
  };
  change(tree);
}

/** White space between blocks says nothing. */
function canonical(fragment: string, change: (tree: Root) => void = () => {}): string {
  const tree = reader.parse(fragment);
  change(tree);
  return html(tree).replace(/\s+/g, ' ').replace(/> /g, '>').replace(/ </g, '<').trim();
}

const reader = unified().use(rehypeParse, {fragment: true}).use(rehypeStringify).freeze();

function html(tree: Root): string {
  return reader.stringify(tree);
}

/** The text of the expected output outside code and tags. */
function wordsOf(fragment: string): string {
  return fragment.replace(/<code[\s\S]*?<\/code>/g, '').replace(/<[^>]*>/g, '');
}
