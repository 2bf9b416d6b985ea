import type {Finding, Place} from '../../src/diagnostics/finding.ts';
import type {Span} from '../../src/support/result.ts';

/** Lines as every editor counts them. A byte order mark takes no column. */
export function linesOf(text: string): readonly string[] {
  return text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
}

export function requireThat(holds: boolean, what: string): asserts holds {
  if (!holds) throw new Error(what);
}

export function requireSpan({start, end}: Span, text: string, what: string): void {
  requireThat(0 <= start && start <= end && end <= text.length, `${what}: ${start}–${end} of ${text.length}`);
}

export function requirePlace(
  {line, column, endLine, endColumn}: Place,
  lines: readonly string[],
  what: string,
): void {
  const isInside =
    line >= 1 &&
    column >= 1 &&
    endLine >= line &&
    (endLine > line || endColumn >= column) &&
    column <= (lines[line - 1] ?? '').length + 1 &&
    endColumn <= (lines[endLine - 1] ?? '').length + 1 &&
    endLine <= lines.length;
  requireThat(isInside, `${what}: ${line}:${column}–${endLine}:${endColumn} of ${lines.length} lines`);
}

/** Every finding says something, lies in its file, and shows what stands there. */
export function requireFindings(findings: readonly Finding[], textOf: (file: string) => string | null): void {
  const known = new Map<string, readonly string[]>();
  const linesIn = (file: string) => {
    const lines = known.get(file) ?? linesOf(textOf(file) ?? '');
    known.set(file, lines);
    return lines;
  };
  for (const {rule, file, place, message, hint, actual, related = []} of findings) {
    requireThat(message !== '' && hint !== '', `${rule} says nothing`);
    const lines = linesIn(file);
    requirePlace(place, lines, `${rule} in ${file}`);
    for (const other of related) requirePlace(other.place, linesIn(other.file), `${rule}, other place`);
    if (actual === undefined) continue;
    const shown = textIn(lines, place);
    requireThat(
      shown === actual,
      `${rule}: ${JSON.stringify(shown)} stands there, not ${JSON.stringify(actual)}`,
    );
  }
}

function textIn(lines: readonly string[], {line, column, endLine, endColumn}: Place): string {
  return lines
    .slice(line - 1, endLine)
    .map((text, index, all) =>
      text.slice(index === 0 ? column - 1 : 0, index === all.length - 1 ? endColumn - 1 : undefined),
    )
    .join('\n');
}
