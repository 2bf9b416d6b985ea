import {visibleJson} from '../support/visible-json.ts';
import {countFindings} from './count-findings.ts';
import type {Finding} from './finding.ts';

/** Findings as one JSON document. `schemaVersion` grows when a field changes its meaning or goes away. */
export function formatJson(findings: readonly Finding[]): string {
  const records = findings.map(({place, ...finding}) => ({
    rule: finding.rule,
    severity: finding.severity,
    file: finding.file,
    ...place,
    message: finding.message,
    hint: finding.hint,
    ...(finding.actual === undefined ? {} : {actual: finding.actual}),
    ...(finding.expected === undefined ? {} : {expected: finding.expected}),
    ...(finding.related === undefined
      ? {}
      : {
          related: finding.related.map((related) => ({
            file: related.file,
            ...related.place,
            message: related.message,
          })),
        }),
  }));
  return visibleJson({schemaVersion: 1, counts: countFindings(findings), findings: records});
}
