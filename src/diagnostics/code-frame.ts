import {visibleText} from '../support/visible-text.ts';
import type {Place} from './finding.ts';

const longestLine = 96;

/**
 * The line of `text` at `place` with its number, and below it carets under the part meant:
 *
 *     12 | needles: 4.6 mm
 *        |          ^^^^^^
 *
 * A place over several lines is marked to the end of its first line; a long line is cut around the place. Empty when
 * the file has no such line.
 */
export function codeFrame(text: string, place: Place): string {
  return codeFrameIn(linesOf(text), place);
}

/** As `codeFrame`, for a text that is shown at many places and was taken apart once. */
export function codeFrameIn(lines: readonly string[], place: Place): string {
  const line = lines[place.line - 1];
  if (line === undefined) return '';
  const start = place.column - 1;
  const end =
    place.endLine === place.line
      ? Math.max(place.endColumn - 1, start + 1)
      : Math.max(line.length, start + 1);
  const from = end <= longestLine ? 0 : Math.max(0, start - 24);
  const before = shown(line.slice(from, start));
  const marked = shown(line.slice(start, Math.min(end, from + longestLine)));
  const after = shown(line.slice(end, from + longestLine));
  const cutLeft = from > 0 ? '…' : '';
  const cutRight = line.length > from + longestLine ? '…' : '';
  const number = String(place.line);
  return [
    `${number} | ${cutLeft}${before}${marked}${after}${cutRight}`.trimEnd(),
    `${' '.repeat(number.length)} | ${' '.repeat(cutLeft.length + before.length)}${'^'.repeat(Math.max(1, marked.length))}`,
  ].join('\n');
}

/** A byte order mark is not part of the first line that the author sees. */
export function linesOf(text: string): readonly string[] {
  return text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
}

function shown(part: string): string {
  return visibleText(part.replaceAll('\t', ' '));
}
