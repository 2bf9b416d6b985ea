import {fine, lacks, type Seen} from './machine-fact.ts';

/** A moment that the clock must have passed, and what it is. */
export interface Passed {
  readonly what: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}

const day = 86_400_000;

/**
 * Whether the clock may be right: it is not before what has already happened. `today` is year-month-day; a day is let
 * pass, since a file may come from another time zone.
 */
export function seeClock(today: string, passed: readonly Passed[], isSet: boolean): Seen {
  const source = isSet ? 'SOURCE_DATE_EPOCH' : 'the clock';
  const now = Date.parse(`${today}T00:00:00Z`);
  const late = passed.find(({at}) => at - now > 2 * day);
  if (late === undefined) return fine(`${source} says ${today}`);
  const date = new Date(late.at).toISOString().slice(0, 10);
  return lacks(
    `${source} says ${today}, and ${late.what} on ${date}`,
    isSet
      ? 'Take SOURCE_DATE_EPOCH out of the environment.'
      : "Set the computer's date: it is printed, and dates in the binder are checked against it.",
  );
}
