import * as z from 'zod';
import {dateSchema} from './quantities.ts';
import {wholeNumberSchema} from './whole-number.ts';

const text = z.string().trim();

/** One answer from the assessors: the results of one round. */
export const assessmentSchema = z.strictObject({
  round: wholeNumberSchema(0).describe('the round that was assessed; 0 is the first submission'),
  received: dateSchema,
  from: text.optional(),
  results: z.record(
    z.string(),
    z.strictObject({
      result: z.enum(['passed', 'rework', 'open']).describe('open while it is not yet written in'),
      remark: text.optional().describe('what the assessors wrote, word for word'),
    }),
  ),
});

export type AssessmentData = z.output<typeof assessmentSchema>;
