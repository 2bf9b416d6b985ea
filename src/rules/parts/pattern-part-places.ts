import type {PatternPart} from '../../model/schema/syllabus.ts';

/** Where a part may be met: words of a heading, a directive, a field of the front matter, a block; and what to write. */
export interface PartPlaces {
  readonly headings: RegExp;
  readonly directives: readonly string[];
  readonly fields: readonly string[];
  readonly blocks: readonly string[];
  readonly hint: string;
}

export const placesOf: Readonly<Record<PatternPart, PartPlaces>> = {
  materials: {
    headings: /\b(materials|yarn|you will need)\b/i,
    directives: ['yarn'],
    fields: ['yarn'],
    blocks: [],
    hint: 'Write the yarn under `yarn`, or a heading `## Materials` with a list.',
  },
  needles: {
    headings: /\bneedles?\b/i,
    directives: [],
    fields: ['needles'],
    blocks: [],
    hint: 'Write them under `needles`, such as `needles: 4 mm`.',
  },
  gauge: {
    headings: /\b(gauge|tension)\b/i,
    directives: ['gauge'],
    fields: ['gauge'],
    blocks: [],
    hint: 'Write it under `gauge`, such as `gauge: {stitches: 20 over 10 cm, rows: 28 over 10 cm}`.',
  },
  'finished size': {
    headings: /\b(finished (size|measurement)s?|sizes?|measurements?)\b/i,
    directives: ['finished-size', 'piece'],
    fields: ['sizes'],
    blocks: [],
    hint: 'Put a line `::finished-size{stitches="…" rows="…"}` where it is to stand, or write `sizes`.',
  },
  notes: {
    headings: /\b(notes?|before you begin|special (stitches|techniques))\b/i,
    directives: [],
    fields: [],
    blocks: [],
    hint: 'Write a heading `## Notes` and below it what a knitter must know before casting on.',
  },
  abbreviations: {
    headings: /\b(abbreviations?|key|terms)\b/i,
    directives: ['key'],
    fields: [],
    blocks: [],
    hint: 'Put a line `::key` where they are to stand; they follow from the rows.',
  },
  instructions: {
    headings: /(?!)/,
    directives: ['piece'],
    fields: [],
    blocks: ['rows'],
    hint: 'Write the rows between a line `~~~rows` and a line `~~~`.',
  },
  chart: {
    headings: /(?!)/,
    directives: ['chart', 'colour-chart'],
    fields: [],
    blocks: ['chart'],
    hint: 'Put a line `::chart` below the rows that it is to show.',
  },
  finishing: {
    headings: /\b(finishing|making up|blocking|to finish)\b/i,
    directives: [],
    fields: [],
    blocks: [],
    hint: 'Write a heading `## Finishing` and below it blocking, seams and ends; the care label comes first.',
  },
};
