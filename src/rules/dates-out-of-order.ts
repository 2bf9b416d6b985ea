import type {Rule} from './define-rule.ts';
import {attemptDates, datesOf, type WrittenDate} from './parts/dates-of.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';

/**
 * An item was started before it was measured and finished, and measured before blocking before it was measured after;
 * its attempts stand in the order in which they were made.
 *
 * Why: dates that run backwards make an assessor doubt the whole record. Blocking may come before or after the day the
 * item was finished. A date in the future is the finding of `future-date` alone.
 *
 * Example: `started: 2026-04-02` and `finished: 2026-03-14`. Of several dates that contradict one, that one is reported.
 */
export const datesOutOfOrder: Rule = {
  id: 'dates-out-of-order',
  summary: 'an item was started before it was measured and finished',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      const isPast = ({date}: WrittenDate) => date <= binder.today;
      const dates = datesOf(item).filter(isPast);
      const attempts = attemptDates(item).filter(isPast);
      for (const {wrong, others} of [...contradictions(dates), ...attemptsOutOfOrder(attempts)]) {
        const [other] = others;
        if (!other) continue;
        report({
          file: item.file,
          ...scalarAt(item.places, wrong.path, wrong.date),
          message: `\`${item.id}\` was ${wrong.what} on \`${wrong.date}\` and ${other.what} on \`${other.date}\``,
          hint: 'Correct the date that is wrong.',
          related: others.map(({what, date, path}) => ({
            file: item.file,
            place: valueAt(item.places, path),
            message: `${what} on \`${date}\``,
          })),
        });
      }
    }
  },
};

interface Contradiction {
  readonly wrong: WrittenDate;
  readonly others: readonly WrittenDate[];
}

/** An attempt is contradicted by the next one when that is of an earlier day. */
function attemptsOutOfOrder(attempts: readonly WrittenDate[]): readonly Contradiction[] {
  return attempts.flatMap((wrong, index) => {
    const others = attempts.slice(index + 1, index + 2).filter(({date}) => date < wrong.date);
    return others.length > 0 ? [{wrong, others}] : [];
  });
}

/** A start that several dates contradict is taken to be the wrong one; otherwise the date that should come later is. */
function contradictions(dates: readonly WrittenDate[]): readonly Contradiction[] {
  const found: Contradiction[] = [];
  const started = dates.find(({what}) => what === 'started');
  const beforeStart = started ? dates.filter(({date}) => date < started.date) : [];
  if (started && beforeStart.length > 1) found.push({wrong: started, others: beforeStart});
  else if (started) for (const wrong of beforeStart) found.push({wrong, others: [started]});

  for (const wrong of dates) {
    if (wrong.what !== 'measured after blocking' || found.some((other) => other.wrong === wrong)) continue;
    const others = dates.filter(({what, date}) => what === 'measured before blocking' && date > wrong.date);
    found.push({wrong, others});
  }
  return found;
}
