import type {Binder, Item} from './binder.ts';
import {leavesInBinder, sheetOfLeaf} from './leaves-in-binder.ts';

/** What happened to an item in one round; what did not happen yet is null. */
export interface RoundHistory {
  readonly round: number;
  /** The day it was posted, year-month-day. */
  readonly sent: string | null;
  /** What the candidate did about the remark of the round before. */
  readonly done: string | null;
  readonly answer: {
    readonly received: string;
    readonly result: 'passed' | 'rework';
    readonly remark: string | null;
  } | null;
}

/** Every round that touches the requirement `id`, the first submission first. */
export function roundsOf(binder: Binder, id: string, item: Item | null): readonly RoundHistory[] {
  const posted = binder.sentRounds.filter(({items}) => items[id] !== undefined);
  const answers = binder.assessments.filter(({results}) => results[id] !== undefined);
  const reworks = item?.fields.rework ?? [];
  const rounds = new Set([...posted, ...answers, ...reworks].map(({round}) => round));
  return [...rounds]
    .sort((a, b) => a - b)
    .map((round) => {
      const answer = answers.findLast((one) => one.round === round);
      const result = answer?.results[id];
      return {
        round,
        sent: posted.findLast((one) => one.round === round)?.sent ?? null,
        done: reworks.findLast((one) => one.round === round)?.done || null,
        answer:
          answer && result && result.result !== 'open'
            ? {received: answer.received, result: result.result, remark: result.remark || null}
            : null,
      };
    });
}

/** A leaf in the paper binder with the day it was last printed, year-month-day. */
export interface PrintedLeaf {
  readonly leaf: string;
  readonly on: string;
  readonly isDraft: boolean;
}

/** The leaves of the item `id` that lie in the paper binder, as far as the candidate recorded them. */
export function printedLeaves({ledger: {entries}}: Binder, id: string): readonly PrintedLeaf[] {
  return [...leavesInBinder(entries).keys()]
    .filter((leaf) => sheetOfLeaf(leaf) === id)
    .flatMap((leaf) => {
      const entry = entries.findLast((one) => one.leaf === leaf && one.done === 'printed');
      return entry ? [{leaf, on: entry.on, isDraft: entry.draft === true}] : [];
    });
}

/** A day in the life of an item: what was done, such as `finished`. */
export interface ItemDate {
  readonly what: string;
  readonly on: string;
}

/** The days that the front matter names, in the order of the work. */
export function itemDates({fields}: Item): readonly ItemDate[] {
  const measured = 'measured' in fields ? fields.measured : [];
  const dates = [
    {what: 'started', on: fields.started},
    {what: 'finished', on: fields.finished},
    ...measured.map(({when, on}) => ({what: `measured ${when}`, on})),
  ];
  return dates.flatMap(({what, on}) => (on === undefined ? [] : [{what, on}]));
}
