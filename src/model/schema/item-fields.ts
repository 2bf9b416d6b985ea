import * as z from 'zod';
import {kinds} from '../kinds.ts';
import {dateSchema, gaugeCountSchema, lengthFromSchema, lengthSchema, putUpSchema} from './quantities.ts';
import {wholeNumberSchema} from './whole-number.ts';

export const statuses = ['planned', 'in work', 'finished', 'sent', 'passed', 'rework'] as const;

const text = z.string().trim();
const citationText = z.string().describe('a citation, such as "@key, p. 57"');
/** A bare citation, or one that says too what the source calls the technique. */
const techniqueCitation = z
  .union([
    citationText.transform((source) => ({source, as: undefined})),
    z.strictObject({
      source: citationText,
      as: text.optional().describe('what the source calls the technique, such as raised increase'),
    }),
  ])
  .describe('a citation, such as "@key, p. 57"');
const oneOrMore = <T extends z.ZodType>(schema: T) =>
  z.union([schema.transform((one) => [one]), z.array(schema)]).describe('one, or a list');

export const yarnSchema = z.strictObject({
  name: text.optional(),
  fibre: text.optional().describe('fibre content, such as 100 % wool'),
  weight: wholeNumberSchema(0, 7).optional().describe("the trade's yarn weight number, 0 to 7"),
  colour: text.optional(),
  'dye-lot': text.optional(),
  'put-up': putUpSchema.optional(),
});

export const techniqueSchema = z.strictObject({
  name: text,
  cite: oneOrMore(techniqueCitation).optional().describe('where the method is described'),
  note: text.optional(),
});

/** The four edges of a piece laid flat. */
export const sizeSchema = z.strictObject({
  top: lengthSchema.optional(),
  bottom: lengthSchema.optional(),
  left: lengthSchema.optional(),
  right: lengthSchema.optional(),
});

export const measurementSchema = z.strictObject({
  when: z.enum(['before blocking', 'after blocking']),
  on: dateSchema.optional(),
  stitches: z
    .array(gaugeCountSchema)
    .default([])
    .describe('stitch counts, each at another place of the piece'),
  rows: z.array(gaugeCountSchema).default([]).describe('row counts, each at another place of the piece'),
  size: sizeSchema.optional(),
});

/** One try at a piece that was worked more than once. Only its day must be said. */
export const attemptSchema = z.strictObject({
  on: dateSchema.describe('the day of the attempt, year-month-day'),
  needles: oneOrMore(text).optional().describe('needle sizes, such as 4.5 mm'),
  edges: sizeSchema
    .pick({left: true, right: true})
    .optional()
    .describe('the left and the right edge, laid flat'),
  stitches: oneOrMore(gaugeCountSchema).default([]).describe('stitch counts, such as 20 over 10 cm'),
  rows: oneOrMore(gaugeCountSchema).default([]).describe('row counts, such as 28 over 10 cm'),
  wrong: text.optional().describe('what went wrong'),
  helped: text.optional().describe('what helped'),
});

export const photoSchema = z.union([
  text.transform((file) => ({
    file,
    description: undefined,
    width: undefined,
    shows: undefined,
    taken: undefined,
  })),
  z.strictObject({
    file: text.describe('a file in content/photos'),
    description: text.optional().describe('what the picture shows, for a reader who cannot see it'),
    width: lengthSchema.optional().describe('printed width; 80 mm when left out'),
    shows: lengthFromSchema(10)
      .optional()
      .describe(
        'how much is seen from the left edge of the picture to the right; a scale bar stands below it then',
      ),
    taken: z
      .enum(['before blocking', 'after blocking'])
      .optional()
      .describe('one taken before stands beside one taken after, at one scale where both say what they show'),
  }),
]);

export const reworkSchema = z.strictObject({
  round: z
    .number()
    .int()
    .min(1)
    .describe('the round in which the reworked item is posted; 1 is the first resubmission'),
  done: text.optional().describe("what was done about the assessors' remark"),
  before: measurementSchema
    .partial({when: true})
    .optional()
    .describe('the measurements as they were sent before'),
});

const common = {
  requirement: text.describe('the id of the requirement this item answers, such as S-07'),
  kind: z.enum(kinds).optional().describe('only needed while the syllabus does not name the requirement'),
  title: text.optional(),
  status: z.enum(statuses).optional(),
  started: dateSchema.optional(),
  finished: dateSchema.optional(),
  rework: z.array(reworkSchema).default([]),
};

const knitted = {
  yarn: oneOrMore(yarnSchema).optional(),
  needles: oneOrMore(text).optional().describe('needle sizes, such as 4.5 mm, US 7 or UK 7'),
  techniques: z.array(techniqueSchema).default([]),
  photos: z.array(photoSchema).default([]),
};

const worked = {
  ...knitted,
  'cast-on': text.optional(),
  'bind-off': text.optional(),
  measured: z.array(measurementSchema).default([]),
  attempts: z
    .array(attemptSchema)
    .default([])
    .describe('earlier tries and this one, the first try first, so that a trouble is seen and its cure'),
  blocking: text.optional(),
};

/** One schema per kind: it checks the front matter and gives the item its type. Which fields must be filled is the syllabus's to say. */
export const fieldSchemas = {
  swatch: z.strictObject({...common, ...worked}),
  pattern: z.strictObject({
    ...common,
    ...knitted,
    gauge: z
      .strictObject({stitches: gaugeCountSchema.optional(), rows: gaugeCountSchema.optional()})
      .optional(),
    sizes: z
      .array(z.strictObject({name: text, width: lengthSchema.optional(), length: lengthSchema.optional()}))
      .default([]),
    notions: z.array(text).default([]),
  }),
  project: z.strictObject({
    ...common,
    ...worked,
    for: text.optional().describe('whom or what the piece is made for'),
    'yarn-used': text.optional(),
  }),
  question: z.strictObject({...common, photos: knitted.photos}),
  report: z.strictObject({...common, photos: knitted.photos}),
  review: z.strictObject({
    ...common,
    reviews: citationText.optional().describe('the source reviewed, such as "@key"'),
    photos: knitted.photos,
  }),
  letter: z.strictObject({
    ...common,
    to: z.array(text).default([]).describe('the address, line by line'),
    date: dateSchema.optional(),
    salutation: text.optional(),
    closing: text.optional(),
  }),
} as const;

export type FieldsOf<K extends keyof typeof fieldSchemas> = z.output<(typeof fieldSchemas)[K]>;
export type Photo = z.output<typeof photoSchema>;
export type Measurement = z.output<typeof measurementSchema>;
export type Size = z.output<typeof sizeSchema>;
export type Yarn = z.output<typeof yarnSchema>;
export type Attempt = z.output<typeof attemptSchema>;
export type Rework = z.output<typeof reworkSchema>;
