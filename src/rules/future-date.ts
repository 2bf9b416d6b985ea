import type {Source} from '../references/source.ts';
import type {Rule} from './define-rule.ts';
import {attemptDates, datesOf} from './parts/dates-of.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';

const sourceDates = {issued: 'published', accessed: 'accessed'} as const;

/**
 * What has happened is not dated in the future.
 *
 * Why: the dates show how the work went on over the months; one that lies ahead is a slip of the year that the
 * assessors will ask about. The dates of the binder and of a letter may lie ahead: they are those of the posting.
 *
 * Example: `finished: 2062-03-14` for 2026. If every date is reported, the calendar of this computer is wrong.
 */
export const futureDate: Rule = {
  id: 'future-date',
  summary: 'what has happened is not dated in the future',
  severity: 'warning',
  check(binder, report) {
    const hint = 'Check the year; what has not happened yet has no date.';
    for (const item of binder.items) {
      for (const {date, path, what} of [...datesOf(item), ...attemptDates(item)]) {
        if (date <= binder.today) continue;
        const message = `\`${item.id}\` was ${what} on \`${date}\`, which is after today, \`${binder.today}\``;
        report({file: item.file, ...scalarAt(item.places, path, date), message, hint});
      }
    }
    for (const {file, received, places} of binder.assessments) {
      if (received <= binder.today) continue;
      const message = `the answer was received on \`${received}\`, which is after today, \`${binder.today}\``;
      report({file, ...scalarAt(places, ['received'], received), message, hint});
    }
    for (const {round, file, sent, places} of binder.sentRounds) {
      if (sent <= binder.today) continue;
      const message = `round \`${round}\` was sent on \`${sent}\`, which is after today, \`${binder.today}\``;
      report({file, ...scalarAt(places, ['sent'], sent), message, hint});
    }
    for (const [index, {leaf, done, on}] of binder.ledger.entries.entries()) {
      if (on <= binder.today) continue;
      const {file, places} = binder.ledger;
      const message = `\`${leaf}\` was ${done} on \`${on}\`, which is after today, \`${binder.today}\``;
      report({file, ...scalarAt(places, ['leaves', index, 'on'], on), message, hint});
    }
    for (const {source, file, places, path} of binder.library) {
      for (const field of ['issued', 'accessed'] as const) {
        const date = earliest(source, field);
        if (date === null || date <= binder.today) continue;
        const message = `\`${source.id}\` was ${sourceDates[field]} in \`${date}\`, which is after today, \`${binder.today}\``;
        report({file, place: valueAt(places, [...path, field]), message, hint});
      }
    }
  },
};

/** A source's date as far as it is known: `2026` or `2026-03`, which sort before the days in them. */
function earliest(source: Source, field: 'issued' | 'accessed'): string | null {
  const parts = source[field]?.['date-parts'][0];
  if (!parts || parts.length === 0) return null;
  return parts.map((part, index) => String(part).padStart(index === 0 ? 4 : 2, '0')).join('-');
}
