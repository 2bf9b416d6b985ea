import type {Place} from '../../src/diagnostics/finding.ts';

/** The text that stands at a place; line endings come out as `\n`. A byte order mark takes no column. */
export function textAt(file: string, place: Place): string {
  const lines = file
    .replace(/^\uFEFF/, '')
    .split(/\r?\n/)
    .slice(place.line - 1, place.endLine);
  const last = lines.length - 1;
  return lines
    .map((line, index) =>
      line.slice(index === 0 ? place.column - 1 : 0, index === last ? place.endColumn - 1 : undefined),
    )
    .join('\n');
}

/** The same text as other editors save it. */
export const savedAs: readonly (readonly [string, (text: string) => string])[] = [
  ['LF', (text) => text],
  ['CRLF', (text) => text.replaceAll('\n', '\r\n')],
  ['a byte order mark', (text) => `\uFEFF${text}`],
  ['CRLF and a byte order mark', (text) => `\uFEFF${text.replaceAll('\n', '\r\n')}`],
];
