import type {ItemOfKind} from '../../model/binder.ts';
import type {BinderSettings} from '../../model/schema/binder-settings.ts';
import type {Yarn} from '../../model/schema/item-fields.ts';
import {longDate} from '../../support/long-date.ts';
import {setTypography} from '../../support/typography.ts';

/** One line of the facts at a glance. */
export interface Fact {
  readonly label: string;
  readonly values: readonly string[];
}

type Language = BinderSettings['language'];
type Entry = readonly [label: string, values: readonly (string | undefined)[]];

/** The facts of a swatch or a project; what was left out of the front matter is left out here. */
export function workedFacts(item: ItemOfKind<'swatch' | 'project'>, language: Language): readonly Fact[] {
  const {fields} = item;
  return filled([
    ['Made for', item.kind === 'project' ? [item.fields.for] : []],
    ['Yarn', yarnLines(fields.yarn)],
    ['Yarn used', item.kind === 'project' ? [item.fields['yarn-used']] : []],
    ['Needles', fields.needles ?? []],
    ['Cast on', [fields['cast-on']]],
    ['Bind off', [fields['bind-off']]],
    ['Blocking', [fields.blocking]],
    ['Worked', [workedDates(fields, language)]],
  ]);
}

/** The facts of a written pattern. */
export function patternFacts({fields}: ItemOfKind<'pattern'>): readonly Fact[] {
  const {gauge} = fields;
  return filled([
    [
      'Sizes',
      fields.sizes.map(({name, width, length}) =>
        [name, dimensions(width, length)].filter(Boolean).join(': '),
      ),
    ],
    ['Yarn', yarnLines(fields.yarn)],
    ['Needles', fields.needles ?? []],
    ['Notions', fields.notions],
    ['Gauge', [withNoun(gauge?.stitches?.text, 'stitches'), withNoun(gauge?.rows?.text, 'rows')]],
  ]);
}

/** The needles and yarns on one line each, for tags. */
export function yarnInShort(yarns: readonly Yarn[] | undefined): string | null {
  const names = (yarns ?? []).map(({name, colour}) => [name, colour].filter(Boolean).join(', '));
  return names.length === 0 ? null : setTypography(names.filter((name) => name !== '').join('; '));
}

function filled(entries: readonly Entry[]): readonly Fact[] {
  return entries
    .map(([label, values]) => ({
      label,
      values: values
        .filter((value) => value !== undefined && value !== '')
        .map((value) => setTypography(value ?? '')),
    }))
    .filter(({values}) => values.length > 0);
}

function yarnLines(yarns: readonly Yarn[] | undefined): readonly string[] {
  return (yarns ?? []).map((yarn) =>
    [
      yarn.name,
      yarn.colour,
      yarn.fibre,
      yarn.weight === undefined ? undefined : `yarn weight ${yarn.weight}`,
      yarn['put-up']?.text,
      yarn['dye-lot'] === undefined ? undefined : `dye lot ${yarn['dye-lot']}`,
    ]
      .filter(Boolean)
      .join(', '),
  );
}

function workedDates(
  {started, finished}: {readonly started?: string | undefined; readonly finished?: string | undefined},
  language: Language,
): string | undefined {
  if (started === undefined) return finished && `finished ${longDate(finished, language)}`;
  if (finished === undefined) return `begun ${longDate(started, language)}`;
  if (started === finished) return longDate(started, language);
  return `${longDate(started, language)} – ${longDate(finished, language)}`;
}

function dimensions(width?: {readonly text: string}, length?: {readonly text: string}): string {
  return [width && `${width.text} wide`, length && `${length.text} long`].filter(Boolean).join(', ');
}

/** `22 over 10 cm` → `22 stitches over 10 cm`; a count that names its noun already stays as written. */
function withNoun(count: string | undefined, noun: string): string | undefined {
  return count === undefined || /\b(sts?|stitch|row)/i.test(count)
    ? count
    : count.replace(/\s+(?=over\b)/i, ` ${noun} `);
}
