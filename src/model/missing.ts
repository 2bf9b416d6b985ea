import type {Finding} from '../diagnostics/finding.ts';
import {plural} from '../support/plural.ts';
import type {Item} from './binder.ts';
import {kindsWithKnitting} from './kinds.ts';

/** What has to be done about something that is missing. */
export type Task =
  | 'words'
  | 'citations'
  | 'photos'
  | 'measuring'
  | 'facts'
  | 'mending'
  | 'rows'
  | 'knitting'
  | 'waiting';

/** Something that keeps an item from being posted. */
export interface Missing {
  readonly task: Task;
  /** How many words, citations, photos, counts, fields or slips. */
  readonly count: number;
  /** In few words, such as `40 words`. */
  readonly inShort: string;
}

interface Remedy {
  readonly task: Task;
  /** In few words, for what is there and wrong. */
  readonly inShort?: string;
}

/** By rule. A rule that is not named here finds slips to mend. */
const remedies: Readonly<Record<string, Remedy>> = {
  'missing-field': {task: 'facts'},
  'stub-text': {task: 'facts'},
  'review-without-source': {task: 'facts'},
  'too-few-words': {task: 'words'},
  'too-many-words': {task: 'words', inShort: 'too many words'},
  'rework-without-answer': {task: 'words', inShort: 'the answer to the remark'},
  'too-few-citations': {task: 'citations'},
  'too-few-books': {task: 'citations'},
  'technique-without-citation': {task: 'citations'},
  'citation-without-locator': {task: 'citations', inShort: 'pages cited'},
  'unknown-source': {task: 'citations', inShort: 'a source for the library'},
  'too-few-photos': {task: 'photos'},
  'missing-photo': {task: 'photos', inShort: 'a photo in its folder'},
  'unreadable-photo': {task: 'photos', inShort: 'a photo that can be read'},
  'coarse-photo': {task: 'photos', inShort: 'a finer photo'},
  'photo-without-description': {task: 'photos'},
  'too-few-gauge-counts': {task: 'measuring'},
  'unmeasured-size': {task: 'measuring'},
  'gauge-spread': {task: 'measuring', inShort: 'counts that lie too far apart'},
  'pattern-without-rows': {task: 'rows'},
  'unread-row': {task: 'rows', inShort: 'rows that are not understood'},
  'row-count': {task: 'rows', inShort: 'rows that do not add up'},
  'row-multiple': {task: 'rows', inShort: 'rows that do not add up'},
  'unread-chart': {task: 'rows', inShort: 'signs of the chart'},
  'piece-too-small': {task: 'knitting', inShort: 'a larger piece'},
  'uneven-edges': {task: 'knitting', inShort: 'even edges'},
  'tied-item-unfinished': {task: 'waiting', inShort: 'the piece it belongs to'},
};

/** Says only that the item is not finished, which is its state and no gap. */
const unfinished = 'unfinished-item';

/**
 * What keeps `item` from being posted, from the findings of its file: what is an error, and what is not there yet.
 * Each kind of gap stands once, in the order in which the file shows it.
 */
export function missingIn(item: Item, findings: readonly Finding[]): readonly Missing[] {
  const gaps = findings.filter(
    ({file, rule, severity, lacks}) =>
      file === item.file && rule !== unfinished && (severity === 'error' || lacks !== undefined),
  );
  const missing = new Map<string, Missing>();
  for (const {rule, lacks} of gaps) {
    const {task, inShort} = remedies[rule] ?? {task: 'mending' as const};
    const words = lacks?.inShort ?? inShort ?? '';
    const key = `${task} ${words}`;
    const count = (missing.get(key)?.count ?? 0) + (lacks?.count ?? 1);
    missing.set(key, {task, count, inShort: words || plural(count, 'slip to mend', 'slips to mend')});
  }
  return isOnNeedles(item)
    ? [stillToKnit, ...[...missing.values()].filter(({task}) => task !== 'measuring')]
    : [...missing.values()];
}

const stillToKnit: Missing = {task: 'knitting', count: 1, inShort: 'still on the needles'};

/** A piece in work with no day of finishing and nothing measured is taken to be on the needles (common practice, no source). */
function isOnNeedles({kind, fields}: Item): boolean {
  const isInWork = fields.status === undefined || fields.status === 'in work';
  const isMeasured = 'measured' in fields && fields.measured.length > 0;
  return kindsWithKnitting.includes(kind) && isInWork && fields.finished === undefined && !isMeasured;
}

/**
 * How much is missing, to compare items by: one for each field, citation, photo, count, edge or slip, and one for each
 * hundred words begun (common practice, no source).
 */
export function amountMissing(missing: readonly Missing[]): number {
  return missing.reduce((sum, {task, count}) => sum + (task === 'words' ? Math.ceil(count / 100) : count), 0);
}

/** The most words that one evening is taken to give (common practice, no source). */
export const wordsInAnEvening = 250;

/** The rule of thumb of `fitsAnEvening`, for people. */
export const eveningRule = `nothing to knit and no rows to write, at most ${wordsInAnEvening} words (common practice, no source)`;

/** Whether one evening could fill the gaps: words, citations, photos, measuring, facts and slips only. */
export function fitsAnEvening(missing: readonly Missing[]): boolean {
  return missing.every(
    ({task, count}) =>
      !['rows', 'knitting', 'waiting'].includes(task) && (task !== 'words' || count <= wordsInAnEvening),
  );
}

/** Whether it needs more than sitting down to write, measure and look up. */
export function needsNeedles(missing: readonly Missing[]): boolean {
  return missing.some(({task}) => task === 'knitting' || task === 'waiting');
}
