import {visibleJson} from '../support/visible-json.ts';
import type {Finding, Place, Severity} from './finding.ts';

export interface RuleDescription {
  readonly id: string;
  readonly summary: string;
}

const levels: Readonly<Record<Severity, string>> = {error: 'error', warning: 'warning', info: 'note'};

/** Findings as SARIF 2.1.0 (OASIS standard, 27 March 2020): one run, URIs relative to the binder folder. */
export function formatSarif(
  findings: readonly Finding[],
  rules: readonly RuleDescription[],
  version: string,
): string {
  const ruleIndex = new Map(rules.map((rule, index) => [rule.id, index]));
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'Swatchleaf',
            version,
            rules: rules.map((rule) => ({id: rule.id, shortDescription: {text: `${rule.summary}.`}})),
          },
        },
        columnKind: 'utf16CodeUnits',
        originalUriBaseIds: {BINDER: {description: {text: 'The binder folder.'}}},
        results: findings.map((finding) => ({
          ruleId: finding.rule,
          ...(ruleIndex.has(finding.rule) ? {ruleIndex: ruleIndex.get(finding.rule)} : {}),
          level: levels[finding.severity],
          message: {text: `${finding.message}. ${finding.hint}`},
          locations: [{physicalLocation: physicalLocation(finding.file, finding.place)}],
          ...(finding.related === undefined
            ? {}
            : {
                relatedLocations: finding.related.map((related, id) => ({
                  id,
                  message: {text: related.message},
                  physicalLocation: physicalLocation(related.file, related.place),
                })),
              }),
        })),
      },
    ],
  };
  return visibleJson(log);
}

function physicalLocation(file: string, place: Place) {
  return {
    artifactLocation: {uri: file.split('/').map(encodeURIComponent).join('/'), uriBaseId: 'BINDER'},
    region: {
      startLine: place.line,
      startColumn: place.column,
      endLine: place.endLine,
      endColumn: place.endColumn,
    },
  };
}
