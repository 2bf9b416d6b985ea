import {expect, test} from 'vitest';
import type {Finding} from '../../src/diagnostics/finding.ts';
import {renderHeadNotes} from '../../src/markdown/render-head-notes.ts';
import {composeText} from './compose-text.ts';

function finding(line: number, message: string, changes: Partial<Finding> = {}): Finding {
  const place = {line, column: 1, endLine: line, endColumn: 2};
  return {
    rule: 'r',
    severity: 'error',
    file: 'content/swatches/a.md',
    place,
    message,
    hint: 'Do.',
    ...changes,
  };
}

/** Markdown that begins on line 4 of its file, with notes, each shown as `<<line>>`. */
function noted(markdown: string, ...lines: readonly number[]): string {
  const {html} = composeText(markdown, {notes: lines.map((line) => finding(line, String(line)))});
  return html.replace(/<aside class="note error">.*?<span class="fact">(\d+)<\/span>.*?<\/aside>/g, '<<$1>>');
}

test('a finding stands beside the last block that begins on its line or before it', () => {
  expect(noted('One\ngoes on.\n\nTwo.\n\nThree.', 5, 7)).toBe(
    '<div class="noted"><<5>><p>One\ngoes on.</p></div>\n<div class="noted"><<7>><p>Two.</p></div>\n<p>Three.</p>',
  );
});

test('beside its item of a list, and beside its row of written rows', () => {
  expect(noted('- one\n- two\n  - within', 6)).toContain('<li class="noted"><<6>>two');
  expect(noted('~~~rows\ncast on: 3\nRow 1:\n  k3.\n\nRow 2: P3.\n~~~', 7, 9)).toBe(
    '<ul class="rows"><li><strong>cast on:</strong> 3</li><li class="noted"><<7>><strong>Row 1:</strong> k3.</li>' +
      '<li class="noted"><<9>><strong>Row 2:</strong> P3.</li></ul>',
  );
});

test('what is found in a heading stands beside the text below it; where none follows, at the end', () => {
  expect(noted('## A\n\nText.', 4)).toBe('<h2>A</h2>\n<div class="noted"><<4>><p>Text.</p></div>');
  expect(noted('Text.\n\n## A', 6)).toBe('<p>Text.</p>\n<h2>A</h2><div class="noted"><<6>></div>');
});

test('several stay in their order; without notes the text is what it was', () => {
  expect(noted('Text.', 4, 4)).toBe('<div class="noted"><<4>><<4>><p>Text.</p></div>');
  expect(noted('Text.')).toBe('<p>Text.</p>');
});

test("what the candidate wrote is text in a note, and another file's finding names it", () => {
  const attack = '`<img src=x onerror=alert(1)>` is no tag';
  const notes = [finding(2, attack), finding(3, 'x', {file: 'content/<b>.yaml', severity: 'info'})];
  const html = renderHeadNotes(notes, ['content/swatches/a.md']);
  expect(html).toContain('<code>&#x3C;img src=x onerror=alert(1)></code> is no tag');
  expect(html).toContain('Error, line 2');
  expect(html).toContain('For information, content/&#x3C;b>.yaml, line 3');
  expect(html).not.toMatch(/<img|<b>/);
});
