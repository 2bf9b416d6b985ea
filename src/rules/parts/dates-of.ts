import type {Item} from '../../model/binder.ts';
import {measurementsOf} from './measurements.ts';

/** A date in an item's front matter, year-month-day, which sorts as text. */
export interface WrittenDate {
  readonly date: string;
  readonly path: readonly (string | number)[];
  /** What happened then, such as `finished`. */
  readonly what: string;
}

/** When the item was worked and measured, in the order these things happen. The date of a letter is not among them. */
export function datesOf(item: Item): readonly WrittenDate[] {
  const {started, finished} = item.fields;
  const measured = measurementsOf(item)
    .map(({on, when}, index) => ({date: on, path: ['measured', index, 'on'], what: `measured ${when}`, when}))
    .sort((a, b) => Number(a.when === 'after blocking') - Number(b.when === 'after blocking'));
  return [
    {date: started, path: ['started'], what: 'started'},
    ...measured.filter(({when}) => when === 'before blocking'),
    {date: finished, path: ['finished'], what: 'finished'},
    ...measured.filter(({when}) => when === 'after blocking'),
  ].flatMap(({date, path, what}) => (date === undefined ? [] : [{date, path, what}]));
}

/** The days of the attempts, in the order written: a piece that is sent may have been begun after the earlier ones. */
export function attemptDates(item: Item): readonly WrittenDate[] {
  const attempts = 'attempts' in item.fields ? item.fields.attempts : [];
  return attempts.map(({on}, index) => ({
    date: on,
    path: ['attempts', index, 'on'],
    what: `tried (attempt ${index + 1})`,
  }));
}
