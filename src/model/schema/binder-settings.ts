import * as z from 'zod';
import {citationStyles, papers, ringCounts, themes, unitSystems} from '../print-choices.ts';
import {insertSettingsSchema, tagSettingsSchema} from './cut-out-settings.ts';
import {dateSchema} from './quantities.ts';
import {wholeNumberSchema} from './whole-number.ts';

const text = z.string().trim();
const severity = z.enum(['off', 'info', 'warning', 'error']);

/** A rule's severity, alone or with the tolerances that the rule documents. */
export const ruleSettingSchema = z.union([severity, z.looseObject({severity: severity.optional()})]);

export const binderSettingsSchema = z.strictObject({
  candidate: z.strictObject({
    name: text,
    number: z
      .union([text, z.number().transform(String)])
      .optional()
      .describe('the number the guild gave the candidate'),
    address: z.array(text).default([]),
    email: text.optional(),
  }),
  certificate: z.strictObject({
    name: text,
    part: text.optional(),
    guild: text.optional().describe('who examines'),
    address: z.array(text).default([]).describe('where the box goes'),
  }),
  date: dateSchema.describe('the date printed on the title page and stored in the PDF'),
  paper: z.enum(papers).default('A4'),
  rings: z.literal(ringCounts).default(2),
  sides: z.enum(['single', 'duplex']).default('single'),
  theme: z.enum(themes).default('usual').describe('large-print is plainer, its text 14 pt'),
  units: z.enum(unitSystems).default('metric').describe('which unit stands first; both are always printed'),
  language: z.enum(['en-GB', 'en-US']).default('en-GB'),
  'citation-style': z.enum(citationStyles).default('author-date'),
  csl: z
    .string()
    .trim()
    .regex(/^(?:\.\/)?[^/\\.][^/\\]*\.csl$/i, {
      error: 'write the name of a file in `content` that ends in `.csl`',
    })
    .optional()
    .describe('another citation style: a CSL file in content, such as my.csl'),
  appendices: z
    .array(z.enum(['concordance', 'attempts']))
    .default([])
    .describe(
      'sheets at the end of the binder; concordance shows what each source calls a technique, attempts how each piece came out from try to try',
    ),
  'photo-dpi': z
    .number()
    .int()
    .min(72)
    .max(600)
    .default(150)
    .describe('a photo below this at its printed size is too coarse'),
  tags: tagSettingsSchema.default({reverse: 'none', 'first-label': 1}),
  inserts: insertSettingsSchema.optional(),
  rounds: z
    .array(
      z.strictObject({
        round: wholeNumberSchema(1).describe('1 is the first resubmission'),
        letter: text.optional().describe('your own words for the letter that goes with it'),
      }),
    )
    .default([]),
  rules: z.record(z.string(), ruleSettingSchema).default({}),
  browser: text.optional().describe('path of the browser that prints'),
});

export type BinderSettings = z.output<typeof binderSettingsSchema>;
export type RuleSetting = z.output<typeof ruleSettingSchema>;
