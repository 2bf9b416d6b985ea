import * as z from 'zod';
import {kinds} from '../kinds.ts';
import {ruleSettingSchema} from './binder-settings.ts';
import {lengthSchema} from './quantities.ts';
import {wholeNumberSchema} from './whole-number.ts';

const text = z.string().trim();
const count = wholeNumberSchema(0);

/** What the trade's written patterns consist of, in their usual order. */
export const patternParts = [
  'materials',
  'needles',
  'gauge',
  'finished size',
  'notes',
  'abbreviations',
  'instructions',
  'chart',
  'finishing',
] as const;
export type PatternPart = (typeof patternParts)[number];

/** What a requirement may limit. Everything is optional; a missing limit is not checked. */
export const limitsSchema = z.strictObject({
  references: z
    .strictObject({
      'at-least': count.optional().describe('citations of different sources'),
      books: count.optional().describe('how many of the sources must be books'),
      locator: z.enum(['required', 'optional']).optional(),
      independent: count
        .optional()
        .describe('how many of the sources must have neither an author nor an earlier edition in common'),
      'per-technique': count.optional().describe('citations that each technique needs of its own'),
    })
    .optional(),
  words: z
    .strictObject({
      from: count.optional(),
      to: count.optional(),
      quoted: z
        .number()
        .min(0)
        .max(100)
        .optional()
        .describe('most words that may be quoted, in percent of the text'),
    })
    .optional(),
  fields: z.array(text).optional().describe('front matter fields that must be filled, such as yarn.name'),
  size: z
    .strictObject({width: lengthSchema.optional(), height: lengthSchema.optional()})
    .optional()
    .describe('smallest size'),
  photos: z.strictObject({'at-least': count.optional()}).optional(),
  gauge: z
    .strictObject({
      places: count.optional().describe('at how many places stitches and rows are counted'),
      spread: z
        .number()
        .min(0)
        .optional()
        .describe('largest allowed difference between counts, in percent of their mean'),
      when: z.array(z.enum(['before blocking', 'after blocking'])).optional(),
    })
    .optional(),
  evenness: z
    .strictObject({
      sides: lengthSchema.optional().describe('by how much the left and right edge may differ'),
      ends: lengthSchema.optional().describe('by how much the top and bottom edge may differ'),
    })
    .optional(),
  pattern: z
    .enum(['required', 'optional'])
    .optional()
    .describe('whether written instructions (a rows block) must be there'),
  parts: z.array(z.enum(patternParts)).optional().describe('what a written pattern must have'),
  'self-check': z
    .array(text)
    .optional()
    .describe('what is looked over by eye before posting, beside the usual points, one sentence each'),
});

export const requirementSchema = z.strictObject({
  id: text.regex(/^[A-Z]{1,4}-[0-9]{1,3}$/, {
    error: 'an id is one to four capital letters, a hyphen and a number, such as S-07',
  }),
  kind: z.enum(kinds),
  title: text,
  asks: text.optional().describe("what the certificate's instructions ask for, in the candidate's own words"),
  'tied-to': z.array(text).default([]).describe('ids of the swatches or projects that a question belongs to'),
  limits: limitsSchema.default({}),
});

export const syllabusSchema = z.strictObject({
  title: text,
  defaults: z
    .partialRecord(z.enum(kinds), limitsSchema)
    .default({})
    .describe('limits for every requirement of a kind'),
  rules: z.record(z.string(), ruleSettingSchema).default({}),
  sections: z.array(
    z.strictObject({
      title: text,
      tab: text.optional().describe('the text on the tab; the title when left out'),
      requirements: z.array(requirementSchema),
    }),
  ),
});

export type SyllabusData = z.output<typeof syllabusSchema>;
export type Limits = z.output<typeof limitsSchema>;
