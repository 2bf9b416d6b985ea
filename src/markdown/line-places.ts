import type {Code} from 'mdast';
import type {Place} from '../diagnostics/finding.ts';

/**
 * The place of each line of a fenced block's text. In lists and quotes the text has lost its indentation and `>`, so a
 * line of the text is the end of a line of the file. `lines` are the lines of the file without their endings.
 */
export function linePlaces(block: Code, lines: readonly string[]): readonly Place[] {
  const firstLine = (block.position?.start.line ?? 0) + 1;
  return block.value.split('\n').map((text, index) => {
    // A block that is opened in the last line and not closed has an empty text and no line of its own.
    const line = Math.min(firstLine + index, lines.length);
    // CommonMark puts U+FFFD in the place of U+0000.
    const written = (lines[line - 1] ?? '').replaceAll('\u0000', '\ufffd');
    // Where a tab was part of the indentation, the text begins with spaces that the file does not have.
    const shown = written.endsWith(text) ? text : text.trimStart();
    return {
      line,
      column: written.length - shown.length + 1,
      endLine: line,
      endColumn: written.length + 1,
    };
  });
}
