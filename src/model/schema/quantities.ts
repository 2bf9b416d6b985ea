import * as z from 'zod';
import {
  type GaugeCount,
  type Length,
  type PutUp,
  parseGaugeCount,
  parseLength,
  parsePutUp,
} from '../../knitting/quantity.ts';
import {failure, type Result} from '../../support/result.ts';

/** A string that a reader of the trade's quantities understands; its problems become schema issues. */
function quantity<T>(parse: (text: string) => Result<T>) {
  return z.string().transform((text, context): T => {
    const result = parse(text);
    if (result.ok) return result.value;
    for (const problem of result.problems) {
      context.addIssue({
        code: 'custom',
        message: problem.message,
        params: {hint: problem.hint, start: problem.span.start, end: problem.span.end},
      });
    }
    return z.NEVER;
  });
}

export const lengthSchema = quantity<Length>(parseLength).describe(
  'a length with its unit, such as 10.2 cm or 4 in',
);
/** A length that may not be below `least` millimetres. */
export function lengthFromSchema(least: number) {
  return quantity<Length>((text) => {
    const length = parseLength(text);
    if (!length.ok || length.value.millimetres.toNumber() >= least) return length;
    const message = `\`${text.trim()}\` is less than \`${least} mm\``;
    const span = {start: 0, end: text.length};
    return failure({message, hint: `Write a length of ${least} mm or more.`, span});
  }).describe(`a length of ${least} mm or more with its unit, such as 50 mm or 2 in`);
}

export const gaugeCountSchema = quantity<GaugeCount>(parseGaugeCount).describe(
  'a count over a length, such as 20.5 over 10 cm or 22 over 4 in',
);
export const putUpSchema = quantity<PutUp>(parsePutUp).describe(
  'length and mass of a ball, such as 200 m / 100 g',
);

/** A calendar date. YAML's core schema leaves dates as text, so nothing depends on a time zone. */
export const dateSchema = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, {
    error: 'a date is written year-month-day, such as 2026-03-14',
    abort: true,
  })
  .refine(isDayOfCalendar, {error: 'check the month and the day: there is no such date'})
  .describe('a date, year-month-day');

/** The rule of the Gregorian calendar: every fourth year is a leap year, of full centuries only every fourth. */
function isDayOfCalendar(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.split('-').map(Number);
  const isLeapYear = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const lengths = [31, isLeapYear ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return day >= 1 && day <= (lengths[month - 1] ?? 0);
}
