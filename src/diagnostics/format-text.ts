import {visibleText} from '../support/visible-text.ts';
import {codeFrameIn, linesOf} from './code-frame.ts';
import {countFindings, describeCounts} from './count-findings.ts';
import type {Finding, Severity} from './finding.ts';

/** Colours a part of a report; the plain palette returns its input. */
export interface Palette {
  readonly severity: (severity: Severity, text: string) => string;
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
}

export const plainPalette: Palette = {
  severity: (_, text) => text,
  strong: (text) => text,
  quiet: (text) => text,
};

/**
 * Findings as text for a person: place, severity and rule, the fact, the line it stands on, what to do, related
 * places; then the counts. `textOf` gives a file's text for the code frame, or null when there is none.
 */
export function formatText(
  findings: readonly Finding[],
  textOf: (file: string) => string | null,
  palette: Palette = plainPalette,
): string {
  const known = new Map<string, readonly string[] | null>();
  const linesIn = (file: string) => {
    if (!known.has(file)) {
      const text = textOf(file);
      known.set(file, text === null ? null : linesOf(text));
    }
    return known.get(file) ?? null;
  };
  const blocks = findings.map((finding) => formatFinding(finding, linesIn, palette));
  return `${[...blocks, describeCounts(countFindings(findings))].join('\n\n')}\n`;
}

function formatFinding(
  finding: Finding,
  linesIn: (file: string) => readonly string[] | null,
  palette: Palette,
): string {
  const place = `${visibleText(finding.file, {oneLine: true})}:${finding.place.line}:${finding.place.column}`;
  const label = palette.severity(finding.severity, finding.severity);
  const lines = [
    `${palette.strong(place)} ${label} ${palette.quiet(finding.rule)}`,
    `  ${sentence(finding.message)}`,
  ];
  const text = linesIn(finding.file);
  const frame = text === null ? '' : codeFrameIn(text, finding.place);
  if (frame !== '') lines.push(palette.quiet(indent(frame)));
  lines.push(`  → ${sentence(finding.hint)}`);
  for (const related of finding.related ?? []) {
    const where = `${visibleText(related.file, {oneLine: true})}:${related.place.line}:${related.place.column}`;
    lines.push(`  see ${where}: ${sentence(related.message)}`);
  }
  return lines.join('\n');
}

function sentence(text: string): string {
  return visibleText(text, {oneLine: true});
}

function indent(text: string): string {
  return text.replace(/^/gm, '    ');
}
