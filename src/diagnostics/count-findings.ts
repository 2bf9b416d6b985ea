import {plural} from '../support/plural.ts';
import type {Finding, Severity} from './finding.ts';

export type FindingCounts = Readonly<Record<Severity, number>>;

export function countFindings(findings: readonly Finding[]): FindingCounts {
  const counts = {error: 0, warning: 0, info: 0};
  for (const finding of findings) counts[finding.severity]++;
  return counts;
}

/** `2 errors, 1 warning`, or `nothing found`. */
export function describeCounts(counts: FindingCounts): string {
  const parts = [
    counts.error > 0 ? plural(counts.error, 'error') : '',
    counts.warning > 0 ? plural(counts.warning, 'warning') : '',
    counts.info > 0 ? `${counts.info} for information` : '',
  ].filter((part) => part !== '');
  return parts.join(', ') || 'nothing found';
}
