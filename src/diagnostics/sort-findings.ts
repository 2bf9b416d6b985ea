import type {Finding} from './finding.ts';

/** By file, line, column, rule, message: the same findings always come out in the same order, and each only once. */
export function sortFindings(findings: readonly Finding[]): readonly Finding[] {
  const sorted = [...findings].sort(compareFindings);
  return sorted.filter((finding, index) => {
    const before = sorted[index - 1];
    return before === undefined || compareFindings(before, finding) !== 0;
  });
}

function compareFindings(a: Finding, b: Finding): number {
  return (
    compareText(a.file, b.file) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column ||
    compareText(a.rule, b.rule) ||
    compareText(a.message, b.message)
  );
}

// Plain code unit order: it does not depend on the machine's locale.
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
