import type {Requirement} from './binder.ts';
import type {Kind} from './kinds.ts';
import {type LimitsInWords, limitsInWords} from './limits-in-words.ts';
import {stubTexts} from './stub-text.ts';

/** How examples in a stub are written. */
export type StubUnits = 'metric' | 'inch';

const [stub] = stubTexts;

/** What the lines of one stub are made from. */
interface Stub {
  readonly requirement: Requirement;
  readonly words: LimitsInWords;
  readonly example: (typeof examples)[StubUnits];
}

/**
 * The front matter lines of a stub below `status`, in the order in which the work fills them in. `…` stands where the
 * syllabus wants something; what may be left out is empty. A note says the limits and how a value is written.
 */
export function stubFields(requirement: Requirement, units: StubUnits): readonly string[] {
  const of = {requirement, words: limitsInWords(requirement.limits), example: examples[units]};
  return fieldsOfKind[requirement.kind](of);
}

const fieldsOfKind: Readonly<Record<Kind, (of: Stub) => readonly string[]>> = {
  swatch: (of) => [...started(of), ...yarn(of), ...working(of), ...measured(of), ...photos(of)],
  project: (of) => [
    ...started(of),
    line(of, 'for', 'whom or what the piece is made for'),
    ...yarn(of),
    ...working(of),
    line(of, 'yarn-used', `such as ${of.example.yarnUsed}`),
    ...measured(of),
    ...photos(of),
  ],
  pattern: (of) => [
    ...started(of),
    ...yarn(of),
    needles(of),
    line(of, 'notions', 'such as [cable needle, two markers]'),
    ...patternGauge(of),
    ...sizes(of),
    ...techniques(of),
    ...photos(of),
    finished(of),
  ],
  question: (of) => [...started(of), ...photos(of), finished(of)],
  report: (of) => [...started(of), ...photos(of), finished(of)],
  review: (of) => [
    line(of, 'reviews', 'the source, such as "@key", between quotes'),
    ...started(of),
    ...photos(of),
    finished(of),
  ],
  letter: (of) => [
    withNote('to:', "the address, line by line; the binder file's when this is empty"),
    ...(isAsked(of, 'to') ? [`  - ${stub}`] : []),
    line(of, 'date', 'year-month-day'),
    line(of, 'salutation', 'such as Dear Assessors,'),
    line(of, 'closing', 'such as Yours sincerely,'),
    ...started(of),
    finished(of),
  ],
};

function started(of: Stub): readonly string[] {
  return [line(of, 'started', 'year-month-day')];
}

function finished(of: Stub): string {
  return line(of, 'finished', 'year-month-day');
}

function needles(of: Stub): string {
  return line(of, 'needles', `such as ${of.example.needle}`);
}

function working(of: Stub): readonly string[] {
  return [
    needles(of),
    line(of, 'cast-on', 'such as long-tail'),
    ...techniques(of),
    line(of, 'bind-off', 'such as chain bind-off'),
    finished(of),
    line(of, 'blocking'),
  ];
}

function yarn(of: Stub): readonly string[] {
  const field = (name: string, note: string | null = null) => {
    const isNamed = name === 'name' && isAsked(of, 'yarn');
    return `  ${withNote(`${name}:${isNamed || isAsked(of, `yarn.${name}`) ? ` ${stub}` : ''}`, note)}`;
  };
  return [
    'yarn:',
    field('name'),
    field('fibre', 'such as 100 % wool'),
    field('weight', 'the number of the yarn weight, 0 to 7'),
    field('colour'),
    field('dye-lot', 'between quotes when it is only digits'),
    field('put-up', `length and weight of a ball, such as ${of.example.putUp}`),
  ];
}

function techniques(of: Stub): readonly string[] {
  const {perTechnique} = of.words;
  const isNeeded = perTechnique !== null || isAsked(of, 'techniques');
  return [
    withNote('techniques:', joinedNote(['one entry for each', perTechnique])),
    ...(isNeeded
      ? [`  - name: ${stub}`, withNote('    cite:', 'such as ["@key, p. 57"]')]
      : ['  # - name: ssk', '  #   cite: ["@key, p. 57"]']),
  ];
}

function measured({requirement, words, example}: Stub): readonly string[] {
  const {gauge, size, evenness} = requirement.limits;
  const moments = gauge?.when?.length ? gauge.when : (['after blocking'] as const);
  const places = gauge?.places ?? (gauge?.when?.length ? 1 : 0);
  const list = places > 0 ? ` [${Array.from({length: places}, () => stub).join(', ')}]` : '';
  const edge = size || evenness ? ` ${stub}` : '';
  const counted = moments.flatMap((when) => [
    `  - when: ${when}`,
    withNote('    on:', 'year-month-day'),
    withNote(`    stitches:${list}`, joinedNote([words.counts, `such as ${example.stitches}`])),
    withNote(`    rows:${list}`, joinedNote([words.counts, `such as ${example.rows}`])),
  ]);
  // The size stands with the last measurement: that of the piece as it is sent.
  return [
    'measured:',
    ...counted,
    withNote('    size:', words.size),
    withNote(`      top:${edge}`, joinedNote([words.ends, `such as ${example.edge}`])),
    `      bottom:${edge}`,
    withNote(`      left:${edge}`, words.sides),
    `      right:${edge}`,
  ];
}

function patternGauge(of: Stub): readonly string[] {
  const count = isAsked(of, 'gauge') ? ` ${stub}` : '';
  return [
    'gauge:',
    withNote(`  stitches:${count}`, `such as ${of.example.stitches}`),
    withNote(`  rows:${count}`, `such as ${of.example.rows}`),
  ];
}

function sizes(of: Stub): readonly string[] {
  const {edge} = of.example;
  return [
    withNote('sizes:', 'one entry for each'),
    ...(isAsked(of, 'sizes')
      ? [`  - name: ${stub}`, withNote('    width:', `such as ${edge}`), '    length:']
      : [`  # - {name: small, width: ${edge}}`]),
  ];
}

function photos({requirement, words}: Stub): readonly string[] {
  return [
    withNote('photos:', joinedNote([words.photos, 'pictures lie in content/photos'])),
    `  # - file: ${requirement.id.toLowerCase()}.jpg`,
    '  #   description: what the picture shows, for a reader who cannot see it',
  ];
}

function line(of: Stub, name: string, note: string | null = null): string {
  return withNote(`${name}:${isAsked(of, name) ? ` ${stub}` : ''}`, note);
}

/** Whether the syllabus wants a field filled, or something within it. */
function isAsked({requirement}: Stub, name: string): boolean {
  const {fields = []} = requirement.limits;
  return fields.some((field) => field === name || field.startsWith(`${name}.`));
}

const examples = {
  metric: {
    putUp: '200 m / 100 g',
    needle: '4.5 mm',
    stitches: '20 over 10 cm',
    rows: '28 over 10 cm',
    edge: '10.2 cm',
    yarnUsed: '180 g',
  },
  inch: {
    putUp: '220 yd / 3.5 oz',
    needle: 'US 7',
    stitches: '20 over 4 in',
    rows: '28 over 4 in',
    edge: '4.25 in',
    yarnUsed: '6 oz',
  },
} as const satisfies Record<StubUnits, object>;

function withNote(text: string, note: string | null): string {
  return note === null ? text : `${text} # ${note}`;
}

function joinedNote(parts: readonly (string | null)[]): string | null {
  return parts.filter((part) => part !== null).join('; ') || null;
}
