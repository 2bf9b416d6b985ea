import * as z from 'zod';
import {type SourceDate, type SourceName, sourceTypes} from '../../references/source.ts';

const text = z.string().trim();
/** Volumes, pages and years are often bare numbers in YAML. */
const textOrNumber = z.union([text, z.number().transform(String)]);

const name = z
  .union([
    text.transform((written): SourceName => {
      const comma = written.indexOf(',');
      if (comma < 0) return {literal: written};
      return {family: written.slice(0, comma).trim(), given: written.slice(comma + 1).trim()};
    }),
    z.strictObject({
      family: text.optional(),
      given: text.optional(),
      literal: text.optional(),
      'non-dropping-particle': text.optional(),
      'dropping-particle': text.optional(),
      suffix: text.optional(),
    }),
  ])
  .describe('a name, such as "Ashdown, Ruth", or the name of a body');

const names = z
  .union([name.transform((one) => [one]), z.array(name)])
  .describe('a name such as "Ashdown, Ruth", or a list of names');

const part = z.union([z.number().int(), z.string().regex(/^\d+$/).transform(Number)]);
const date = z
  .union([
    z
      .number()
      .int()
      .transform((year): SourceDate => ({'date-parts': [[year]]})),
    z.string().transform((written, context): SourceDate => {
      const read = readDate(written.trim());
      if (read) return read;
      context.addIssue({
        code: 'custom',
        message: `\`${written}\` is not a date that can be read`,
        params: {
          hint: 'Write the year, such as 1843, or 2011-05, or 2011-05-17; `c. 1910` for an uncertain year.',
        },
      });
      return z.NEVER;
    }),
    z.strictObject({
      'date-parts': z.array(z.array(part).min(1).max(3)).min(1).max(2),
      circa: z.union([z.boolean(), z.number().transform((value) => value !== 0)]).optional(),
    }),
  ])
  .describe('a year, or year-month, or year-month-day');

/** An ISBN of ten digits that begins with 0 loses it as a YAML number. */
const isbn = z.union([text, z.number().transform((digits) => String(digits).padStart(10, '0'))]);

/** An entry of `library.yaml`, with the names that CSL-JSON uses (CSL 1.0.2 specification, appendices III and IV). */
export const sourceSchema = z.strictObject({
  id: textOrNumber.describe('the key by which it is cited, such as ashdown2011'),
  type: z.enum(sourceTypes).describe('what it is, such as book or webpage'),
  title: textOrNumber.optional(),
  author: names.optional(),
  editor: names.optional(),
  translator: names.optional(),
  director: names.optional(),
  interviewer: names.optional(),
  issued: date.optional(),
  accessed: date.optional(),
  'original-date': date.optional(),
  edition: textOrNumber.optional(),
  'container-title': text.optional(),
  'collection-title': text.optional(),
  publisher: text.optional(),
  'publisher-place': text.optional(),
  volume: textOrNumber.optional(),
  issue: textOrNumber.optional(),
  page: textOrNumber.optional(),
  'number-of-pages': textOrNumber.optional(),
  medium: text.optional(),
  genre: text.optional(),
  language: text.optional(),
  archive: text.optional(),
  URL: text.optional(),
  DOI: text.optional(),
  ISBN: isbn.optional(),
  ISSN: text.optional(),
  note: text.optional(),
  shelf: z.enum(['own', 'library', 'online']).optional().describe('where you find it again'),
});

/** The library: a list of sources, or one under `references`, as CSL-YAML has it. */
export const librarySchema = z.union([
  z.array(sourceSchema),
  z.looseObject({references: z.array(sourceSchema)}),
]);

function readDate(written: string): SourceDate | null {
  const match = /^(c\.|ca\.|circa)?\s*(\d{1,4})(?:-(0?[1-9]|1[0-2])(?:-(0?[1-9]|[12]\d|3[01]))?)?$/.exec(
    written,
  );
  if (!match) return null;
  const parts = match
    .slice(2)
    .filter((digits) => digits !== undefined)
    .map(Number);
  return {'date-parts': [parts], ...(match[1] ? {circa: true} : {})};
}
