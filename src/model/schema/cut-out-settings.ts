import * as z from 'zod';
import {labelSheetNames, papers, tagReverses} from '../print-choices.ts';
import {lengthFromSchema, lengthSchema} from './quantities.ts';
import {wholeNumberSchema} from './whole-number.ts';

/** Smaller pieces hold no word that can be read (common practice, no source). */
const side = lengthFromSchema(5);
/** More than any sheet has; without an end a slip of the pen would draw for hours. */
const count = wholeNumberSchema(1, 60);

export const labelSheetSchema = z.strictObject({
  paper: z.enum(papers),
  columns: count.describe('how many labels stand side by side, a whole number from 1'),
  rows: count.describe('how many labels stand one below the other, a whole number from 1'),
  width: side,
  height: side,
  left: lengthSchema
    .optional()
    .describe(
      'from the left edge of the paper to the first label, such as 7.25 mm; when left out, the labels stand in the middle',
    ),
  top: lengthSchema
    .optional()
    .describe(
      'from the top edge of the paper to the first label, such as 15 mm; when left out, the labels stand in the middle',
    ),
  'gap-across': lengthSchema
    .optional()
    .describe('between two labels side by side, such as 2.5 mm; none when left out'),
  'gap-down': lengthSchema
    .optional()
    .describe('between two labels one below the other, such as 2.5 mm; none when left out'),
});

export const tagSettingsSchema = z
  .strictObject({
    width: side.optional(),
    height: side.optional(),
    hole: z
      .boolean()
      .optional()
      .describe(
        'true or false: whether the place of the hole is marked; when left out, on plain paper and not on labels',
      ),
    reverse: z
      .enum(tagReverses)
      .default('none')
      .describe(
        'gauge and size on the reverse: folded, of a tag printed twice as high, or printed on the back of the paper',
      ),
    sheet: z
      .union([z.enum(labelSheetNames), labelSheetSchema])
      .optional()
      .describe('the labels that tags are printed on; plain paper with cut marks when left out'),
    'first-label': z
      .number()
      .int()
      .min(1)
      .default(1)
      .describe(
        'the number of the first label to print on, counted by rows from 1, when those before it are used up',
      ),
  })
  .describe('size of one tag, 90 × 55 mm when left out, and what it is printed on');

export const insertSettingsSchema = z
  .strictObject({
    spine: z
      .strictObject({width: side, height: side})
      .optional()
      .describe('the strip for the back of the binder: its width and height'),
    cover: z
      .boolean()
      .default(false)
      .describe('true or false: whether a leaf is printed for the front of the binder'),
    tabs: z
      .strictObject({width: side, height: side})
      .optional()
      .describe('strips for the tabs, one for each section: width and height of one'),
    candidate: z
      .enum(['name and number', 'name', 'number'])
      .default('name and number')
      .describe(
        'how the candidate is named on spine and cover; number where assessors must not see the name',
      ),
  })
  .describe('what goes into the pockets and tabs of the binder itself');
