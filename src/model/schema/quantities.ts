import {z} from 'zod';
import {
  type GaugeCount,
  type Length,
  type PutUp,
  parseGaugeCount,
  parseLength,
  parsePutUp,
} from '../../knitting/quantity.ts';
import type {Result} from '../../support/result.ts';

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
export const gaugeCountSchema = quantity<GaugeCount>(parseGaugeCount).describe(
  'a count over a length, such as 20.5 over 10 cm or 22 over 4 in',
);
export const putUpSchema = quantity<PutUp>(parsePutUp).describe(
  'length and mass of a ball, such as 200 m / 100 g',
);

/** A calendar date. YAML's core schema leaves dates as text, so nothing depends on a time zone. */
export const dateSchema = z
  .string()
  .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, {
    error: 'a date is written year-month-day, such as 2026-03-14',
  })
  .describe('a date, year-month-day');
