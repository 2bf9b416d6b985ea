import {describe, expect, test} from 'vitest';
import {limits} from '../../src/markdown/input-limits.ts';
import {composeText} from './compose-text.ts';

/*
 * Inputs that bring Markdown parsers down: time that grows with the square of the length, or a stack that runs out and ends the
 * whole program. Each is either read whole or refused at its place.
 */
const backticks = Array.from({length: 1000}, (_, index) => '`'.repeat(index + 1)).join('\n');
const paragraph = `${'word '.repeat(19)}\n`;

describe('refused', () => {
  test.each([
    ['lists inside lists in one line', '- '.repeat(5000), 'nesting'],
    [
      'lists inside lists over many lines',
      Array.from({length: 60}, (_, depth) => `${'  '.repeat(depth)}- a`).join('\n'),
      'nesting',
    ],
    [
      'numbered lists inside lists',
      Array.from({length: 60}, (_, depth) => `${'   '.repeat(depth)}1. a`).join('\n'),
      'nesting',
    ],
    ['quotes inside quotes', `${'>'.repeat(5000)} a`, 'nesting'],
    ['lists and quotes by turns', `${'> - '.repeat(40)}a`, 'nesting'],
    ['stars', '*'.repeat(5000), 'marks'],
    ['emphasis that never ends', '*a **b '.repeat(2000), 'marks'],
    ['runs of backticks of all lengths', backticks, 'file'],
    ['fewer of them', backticks.slice(0, 40_000), 'effort'],
    ['brackets', '['.repeat(5000), 'marks'],
    ['pictures', '!['.repeat(5000), 'marks'],
    ['citations', '[@a '.repeat(2000), 'marks'],
    ['directives in the text', ':a['.repeat(2000), 'marks'],
    ['angles', '<a '.repeat(2000), 'marks'],
    ['footnotes', '[^a]'.repeat(5000), 'marks'],
    ['the dearest block again and again', `${'*a**'.repeat(333)}\n\n`.repeat(100), 'effort'],
    ['deep lists again and again', `${'- '.repeat(50)}a\n\n`.repeat(1000), 'effort'],
    [
      'a table as wide as it is long',
      `|${'a|'.repeat(500)}\n|${'-|'.repeat(500)}\n${'|\n'.repeat(50)}`,
      'cells',
    ],
    ['open containers', ':::a\n\n'.repeat(100), 'containers'],
    ['a line too long', 'a'.repeat(limits.line + 1), 'line'],
    ['a paragraph too long', paragraph.repeat(600), 'block'],
    ['a paragraph of too many lines', 'a\n'.repeat(2001), 'blockLines'],
    ['too many lines', '\n'.repeat(limits.lines + 1), 'lines'],
    ['a file too long', `${paragraph}\n`.repeat(2800), 'file'],
  ] as const)('%s', (_, markdown, limit) => {
    const {html, findings, parsed} = composeText(markdown);
    expect(parsed.findings.map(({rule}) => rule)).toEqual(['too-long']);
    expect(parsed.findings[0]?.message).toContain(`up to \`${limits[limit]}\` are read`);
    expect([html, findings, parsed.body.words]).toEqual(['', [], 0]);
  });
});

describe('read', () => {
  test.each([
    ['lists as deep as allowed', `${'- '.repeat(limits.nesting)}a`],
    ['quotes as deep as allowed', `${'>'.repeat(limits.nesting)} a`],
    ['as many stars as allowed', `${'*'.repeat(limits.marks - 1)}a`],
    ['emphasis inside emphasis', `${'*a **b '.repeat(300)}`],
    ['a long list', '- word word\n'.repeat(1900)],
    [
      'definitions',
      Array.from({length: 900}, (_, number) => `a[^${number}]\n\n[^${number}]: b\n\n`).join(''),
    ],
    ['a heading of many lines', `${'a\n'.repeat(1900)}===`],
    ['addresses that never come', `${'a.'.repeat(9000)}@`],
    ['entities', '&amp;'.repeat(4000)],
    ['a row of hyphens and digits', '1-'.repeat(9000)],
    ['quotation marks', '"'.repeat(19_000)],
    ['digits', '1'.repeat(19_000)],
    ['rules in a fence', `~~~\n${'*'.repeat(19_000)}\n${'- '.repeat(5000)}\n~~~`],
  ])('%s', (_, markdown) => {
    const {parsed, html} = composeText(markdown);
    expect(parsed.findings).toEqual([]);
    expect(html).not.toBe('');
  });

  test('the longest item that is allowed, its words counted', () => {
    const text = `${paragraph.repeat(10)}\n`.repeat(250);
    expect(text.length).toBeLessThan(limits.file);
    expect(composeText(text).parsed.body.words).toBe(19 * 10 * 250);
  });
});
