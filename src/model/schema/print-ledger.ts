import * as z from 'zod';
import {dateSchema} from './quantities.ts';

const text = z.string().trim();

/**
 * What was put into the binder and what was taken out, in the order in which it was done. A file of one line a leaf
 * that is only ever added to, so that two copies can be merged by keeping the lines of both.
 */
export const printLedgerSchema = z.strictObject({
  leaves: z
    .array(
      z.strictObject({
        leaf: text.describe(
          'the number of the leaf, such as S-07 · 2 of 3; with two sides, that of its front',
        ),
        done: z.enum(['printed', 'taken out']),
        on: dateSchema,
        fingerprint: text.optional().describe('stands for everything that is drawn on a printed leaf'),
        draft: z.boolean().optional().describe('whether the printed leaf is marked as a draft'),
      }),
    )
    .default([]),
});

export type LedgerEntry = z.output<typeof printLedgerSchema>['leaves'][number];
