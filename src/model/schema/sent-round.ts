import * as z from 'zod';
import {dateSchema} from './quantities.ts';
import {wholeNumberSchema} from './whole-number.ts';

const text = z.string().trim();

/** What was posted in one round. The texts and PDFs lie beside the file, as they were sent. */
export const sentRoundSchema = z.strictObject({
  round: wholeNumberSchema(0).describe('0 is the first submission'),
  sent: dateSchema,
  items: z
    .record(z.string(), text)
    .describe("by id, the item's text as it was sent, such as swatches/s-07.md"),
});

export type SentRoundData = z.output<typeof sentRoundSchema>;
