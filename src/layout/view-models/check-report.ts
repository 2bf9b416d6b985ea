import {countFindings, describeCounts} from '../../diagnostics/count-findings.ts';
import type {Finding} from '../../diagnostics/finding.ts';
import {type Item, itemsById, type Section} from '../../model/binder.ts';
import {type MessagePart, messageParts} from '../../support/message-parts.ts';
import {plural} from '../../support/plural.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import {stateInWords} from './contents.ts';
import {type WordBar, wordBar} from './word-bar.ts';

export interface FindingView {
  readonly severity: Finding['severity'];
  readonly message: readonly MessagePart[];
  readonly hint: readonly MessagePart[];
  readonly place: string;
  readonly rule: string;
}

export interface CheckedItem {
  readonly id: string;
  readonly title: string;
  readonly state: string;
  readonly citations: string | null;
  readonly words: WordBar | null;
  readonly findings: readonly FindingView[];
}

export interface CheckedSection {
  readonly number: number;
  readonly title: string;
  /** How much of it is there, such as `12 of 18 items`. */
  readonly present: string;
  readonly counts: string;
  readonly items: readonly CheckedItem[];
}

export interface CheckReportView {
  readonly candidate: string;
  readonly counts: string;
  readonly errors: number;
  readonly sections: readonly CheckedSection[];
  /** Findings about files that are no item's. */
  readonly elsewhere: readonly {readonly file: string; readonly findings: readonly FindingView[]}[];
}

export function checkReportView(input: LayoutInput): CheckReportView {
  const {binder, findings} = input;
  const items = itemsById(binder);
  const byFile = groupByFile(findings);
  const sections = binder.syllabus.sections.map((section) => checkedSection(section, items, byFile));
  const itemFiles = new Set(
    binder.syllabus.sections.flatMap(({requirements}) => requirements.map(({id}) => items.get(id)?.file)),
  );
  const counts = countFindings(findings);
  return {
    candidate: binder.settings.candidate.name,
    counts: describeCounts(counts),
    errors: counts.error,
    sections,
    elsewhere: [...byFile]
      .filter(([file]) => !itemFiles.has(file))
      .map(([file, ofFile]) => ({file, findings: ofFile.map(findingView)})),
  };
}

function groupByFile(findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const group = groups.get(finding.file);
    if (group) group.push(finding);
    else groups.set(finding.file, [finding]);
  }
  return groups;
}

function checkedSection(
  section: Section,
  items: ReadonlyMap<string, Item>,
  byFile: ReadonlyMap<string, readonly Finding[]>,
): CheckedSection {
  const present = section.requirements.flatMap(({id}) => items.get(id) ?? []);
  const findings = present.flatMap(({file}) => byFile.get(file) ?? []);
  return {
    number: section.number,
    title: setTypography(section.title),
    present: `${present.length} of ${plural(section.requirements.length, 'item')}`,
    counts: describeCounts(countFindings(findings)),
    items: section.requirements.map((requirement) => {
      const item = items.get(requirement.id);
      return {
        id: requirement.id,
        title: setTypography(item?.title ?? requirement.title),
        state: stateInWords(item),
        citations: item === undefined ? null : citationsInWords(item),
        words: item === undefined ? null : wordBar(item),
        findings: item === undefined ? [] : (byFile.get(item.file) ?? []).map(findingView),
      };
    }),
  };
}

function findingView({severity, message, hint, file, place, rule}: Finding): FindingView {
  return {
    severity,
    message: messageParts(message),
    hint: messageParts(hint),
    place: `${file}:${place.line}:${place.column}`,
    rule,
  };
}

/** `5, of 4 sources; 2 asked`. Null where nothing is cited and nothing asked. */
function citationsInWords({citations, requirement}: Item): string | null {
  const asked = requirement?.limits.references?.['at-least'];
  const sources = new Set(citations.map(({citation}) => citation.key)).size;
  if (citations.length === 0 && asked === undefined) return null;
  const cited = citations.length === 0 ? 'none' : `${citations.length}, of ${plural(sources, 'source')}`;
  return asked === undefined ? cited : `${cited}; ${asked} asked`;
}
