import {countFindings, describeCounts} from '../../diagnostics/count-findings.ts';
import type {Finding} from '../../diagnostics/finding.ts';
import type {BinderStatus, RequirementStatus} from '../../model/binder-status.ts';
import type {StateCounts} from '../../model/item-state.ts';
import {eveningRule} from '../../model/missing.ts';
import {countsInWords, missingInWords, nextStep} from '../../model/state-words.ts';
import {wrapWords} from '../../support/wrap-words.ts';
import {hung} from './hung.ts';
import {itemLines} from './item-lines.ts';
import {barKey, stateBar} from './state-bar.ts';

/** How many items each of the two lists shows. */
const listed = 7;
const longestTitle = 28;
const barWidth = 20;
/** On a narrower line the bar stands below its title. */
const narrow = 66;

export interface OverviewInput {
  readonly title: string;
  readonly status: BinderStatus;
  /** Those of `check`. */
  readonly findings: readonly Finding[];
  readonly columns: number;
}

/** The whole binder as text for a terminal. */
export function overviewText({title, status, findings, columns}: OverviewInput): string {
  const {sections, counts, ready, nearest, evening} = status;
  const rows = [
    ...sections.map((section) => ({title: `${section.number} ${section.title}`, counts: section.counts})),
    {title: 'The whole binder', counts},
  ];
  const key = barKey(counts);
  return [
    ...wrapWords(title, columns),
    '',
    ...barLines(rows, columns),
    ...(key === '' ? [] : ['', ...wrapWords(key, columns)]),
    ...block('Nothing is missing', ready, ({state}) => nextStep(state), columns),
    ...block('Nearest to done', nearest, missingInWords, columns),
    ...block('One evening could finish', evening, () => null, columns),
    ...(evening.length > 0 ? hung('  ', `One evening: ${eveningRule}.`, columns) : []),
    '',
    ...wrapWords(`Found by check: ${describeCounts(countFindings(findings))}.`, columns),
    '',
  ].join('\n');
}

function barLines(
  rows: readonly {readonly title: string; readonly counts: StateCounts}[],
  columns: number,
): readonly string[] {
  const width = Math.min(longestTitle, Math.max(...rows.map(({title}) => [...title].length)));
  return rows.flatMap(({title, counts}) => {
    const bar = stateBar(counts, barWidth).padEnd(barWidth);
    if (columns < narrow)
      return [...wrapWords(title, columns), ...hung(`  ${bar}  `, countsInWords(counts), columns)];
    const before = `${cut(title, width).padEnd(width)}  ${bar}  `;
    return hung(before, countsInWords(counts), columns);
  });
}

function block(
  heading: string,
  list: readonly RequirementStatus[],
  says: (status: RequirementStatus) => string | null,
  columns: number,
): readonly string[] {
  if (list.length === 0) return [];
  const shown = list.slice(0, listed);
  const rest = list.length - shown.length;
  return ['', heading, ...itemLines(shown, says, columns), ...(rest > 0 ? [`  and ${rest} more`] : [])];
}

function cut(title: string, width: number): string {
  const letters = [...title];
  return letters.length <= width
    ? title
    : `${letters
        .slice(0, width - 3)
        .join('')
        .trimEnd()}...`;
}
