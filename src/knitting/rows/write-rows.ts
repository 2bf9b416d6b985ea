import {englishList} from '../../support/english-list.ts';
import {bindOffLabel} from './read-bind-off-sentence.ts';
import type {
  Extent,
  Landmark,
  NumberRange,
  RowLabel,
  RowRepeat,
  Sized,
  StatedCount,
  Step,
  WrittenPattern,
  WrittenRow,
} from './row-syntax.ts';
import type {Dialect, Stitch} from './stitch.ts';

/**
 * The pattern as canonical written rows: reading them again gives the same steps. Every abbreviation is that of the
 * dialect.
 */
export function writeRows(pattern: WrittenPattern, dialect: Dialect = 'american'): string {
  const lines = [...writeHeader(pattern), ...pattern.entries.map((entry) => writeEntry(entry, dialect))];
  return `${lines.join('\n')}\n`;
}

/** The steps alone, as they stand behind the label. */
export function writeSteps(steps: readonly Step[], dialect: Dialect = 'american'): string {
  return writeAt(steps, dialect, 1);
}

/** A repeat inside a repeat has a mark of its own: `*`, `**`, `***`. */
function writeAt(steps: readonly Step[], dialect: Dialect, depth: number): string {
  return steps.map((step) => writeStep(step, dialect, depth)).join(', ');
}

function writeHeader({header}: WrittenPattern): string[] {
  const lines: string[] = [];
  if (header.multiple) lines.push(`multiple: ${header.multiple.of} + ${header.multiple.plus}`);
  if (header.sizes.length > 0) lines.push(`sizes: ${bracketed(header.sizes)}`);
  if (header.start)
    lines.push(`${header.start.isCastOn ? 'cast on' : 'stitches'}: ${writeSized(header.start)}`);
  if (header.colours.length > 0) lines.push(`colours: ${header.colours.join(', ')}`);
  if (header.isRound) lines.push('in the round');
  const {bindOffLoop, yarnForward, repeatTimes, passageTimes, lastRepeat, makeOne} = header.readings;
  if (bindOffLoop) lines.push(`reading: bind-off loop ${bindOffLoop}`);
  if (yarnForward)
    lines.push(`reading: yarn forward makes ${yarnForward === 'yarn over' ? 'a' : 'no'} stitch`);
  if (repeatTimes) lines.push(`reading: repeat times ${repeatTimes}`);
  if (passageTimes) lines.push(`reading: times of the ${passageTimes}`);
  if (lastRepeat) lines.push(`reading: last repeat ${lastRepeat}`);
  if (makeOne === 'yarn over') lines.push('reading: make 1 yarn over');
  for (const {id, uses, makes, names} of header.ownAbbreviations) {
    lines.push(`${id}: uses ${uses}, makes ${makes}, "${names.american.words}"`);
  }
  return lines;
}

function writeEntry(entry: WrittenRow | RowRepeat, dialect: Dialect): string {
  if (entry.kind === 'repeat rows') return writeRepeat(entry);
  const stated = entry.stated.map((count) => ` ${writeStated(count)}`).join('');
  const steps = writeSteps(entry.steps, dialect);
  // A bind-off that has no label is a sentence of its own.
  if (entry.label.text === bindOffLabel) return `${steps.charAt(0).toUpperCase()}${steps.slice(1)}.${stated}`;
  return `${writeLabel(entry.label)}: ${steps}.${stated}`;
}

function writeLabel({ranges, every, side, isRound, text, says, isPaired}: RowLabel): string {
  if (ranges.length === 0) return text;
  const isMany = ranges.length > 1 || ranges.some(({first, last}) => first !== last);
  const word = `${isRound ? 'Rnd' : 'Row'}${isMany ? 's' : ''}`;
  const others = every === null ? '' : ` and all ${everyWords(every)}${isRound ? 'rnds' : 'rows'}`;
  const remarks = [every === null ? side : null, says && `${says} row`, isPaired ? 'paired' : null].filter(
    (remark) => remark,
  );
  const bracket = remarks.length > 0 ? ` (${remarks.join(', ')})` : '';
  return `${word} ${writeRanges(ranges)}${others}${bracket}`;
}

function everyWords(every: NonNullable<RowLabel['every']>): string {
  return every === 'row' ? '' : `${every} `;
}

function writeRanges(ranges: readonly NumberRange[]): string {
  return englishList(ranges.map(({first, last}) => (first === last ? `${first}` : `${first}–${last}`)));
}

function writeRepeat({label, what, often, stated}: RowRepeat): string {
  const rows =
    what.kind === 'rows'
      ? `rows ${writeRanges(what.ranges)}`
      : what.kind === 'last'
        ? `the last ${what.count} rows`
        : what.kind === 'from'
          ? `from row ${what.first}`
          : 'these rows';
  const extent =
    often.kind === 'more'
      ? ` ${writeSized(often.count)} more times`
      : often.kind === 'until stitches'
        ? ` until ${writeSized(often.count)} sts remain`
        : often.kind === 'open' && often.isForPattern
          ? ' for pattern'
          : '';
  return `${label ? `${writeLabel(label)}: ` : ''}Rep ${rows}${extent}.${stated ? ` ${writeStated(stated)}` : ''}`;
}

function writeStated({kind, count}: StatedCount): string {
  const change = kind === 'increase' ? ' increased' : kind === 'decrease' ? ' decreased' : '';
  return `${writeSized(count)} sts${change}.`;
}

function writeStep(step: Step, dialect: Dialect, depth: number): string {
  switch (step.kind) {
    case 'work': {
      const name = step.isDoubtful ? 'yf' : step.stitch.names[dialect].abbreviation;
      return (
        writeRun(name, step.stitch, step.extent) +
        (step.yarn ? ` wyi${step.yarn === 'front' ? 'f' : 'b'}` : '') +
        (step.colour === undefined ? '' : ` with ${step.colour}`)
      );
    }
    case 'repeat': {
      const isStar = step.style === 'star';
      const inner = writeAt(step.steps, dialect, isStar ? depth + 1 : depth);
      const mark = '*'.repeat(depth);
      return isStar
        ? `${mark}${inner}; rep from ${mark}${starExtent(step.extent)}`
        : `[${inner}] ${writeExtent(step.extent)}`;
    }
    case 'again':
      return `[${writeAt(step.steps, dialect, depth)}] ${writeExtent(step.extent)}`;
    case 'into':
      return `(${writeAt(step.steps, dialect, depth)}) in next ${step.uses === 1 ? 'st' : `${step.uses} sts`}`;
    case 'pass over':
      return `${writeAt(step.steps, dialect, depth)}, ${step.over === 1 ? 'psso' : `p${step.over}sso`}`;
    case 'bind off':
      return `${dialect === 'british' ? 'cast off' : 'BO'} ${bindOffExtent(step.extent)}`;
    case 'cast on':
      return `${step.how === 'pick up' ? 'pick up and k' : 'CO'} ${writeSized(step.count)}`;
    case 'marker':
      return `${markerWords[step.action]}${step.name === null ? '' : ` ${step.name}`}`;
    case 'turn':
      return step.how === 'plain' ? 'turn' : 'w&t';
    case 'yarn':
      return step.to === 'back' ? 'yb' : 'wyif';
    case 'either':
      return writeAt(step.ways[0], dialect, depth);
    case 'evenly':
      return `${step.change === 'increase' ? 'inc' : 'dec'} ${writeSized(step.count)} sts evenly across row`;
  }
}

/** `k5`, `k3 tbl`, `k2tog 3 times`, `k to last 3 sts`. */
function writeRun(name: string, stitch: Stitch, extent: Extent): string {
  if (extent.kind !== 'times') return `${name} ${writeExtent(extent)}`;
  const takesNumber = (stitch.kind === 'plain' || stitch.kind === 'slip') && /^[a-z]+( |$)/.test(name);
  if (stitch.kind === 'as set') return `${name} ${writeSized(extent.count)} sts`;
  if (!takesNumber) return isOne(extent.count) ? name : `${name} ${writeExtent(extent)}`;
  const [word = '', ...rest] = name.split(' ');
  return [`${word}${writeSized(extent.count)}`, ...rest].join(' ');
}

const markerWords = {place: 'pm', slip: 'sm', remove: 'rm'} as const;

const landmarkWords: Readonly<Record<Landmark, string>> = {
  marker: 'marker',
  gap: 'gap',
  turn: 'turn',
  'double stitch': 'ds',
  'round start': 'beg of rnd',
};

/** How far or how often, as canonical written rows have it. */
export function writeExtent(extent: Extent): string {
  switch (extent.kind) {
    case 'times':
      return `${writeSized(extent.count)} times`;
    case 'more':
      return `${writeSized(extent.count)} ${extent.isPlain ? '' : 'more '}times`;
    case 'to end':
    case 'as fits':
      return 'to end';
    case 'to last':
      return isOne(extent.count) ? 'to last st' : `to last ${writeSized(extent.count)} sts`;
    case 'to landmark': {
      const place = `${landmarkWords[extent.landmark]}${extent.name === null ? '' : ` ${extent.name}`}`;
      if (extent.before) return `to ${writeStitches(extent.before)} before ${place}`;
      return extent.past ? `to ${writeStitches(extent.past)} past ${place}` : `to ${place}`;
    }
  }
}

function isOne({values}: Sized): boolean {
  return values.length === 1 && values[0] === 1;
}

function writeStitches(count: Sized): string {
  return `${writeSized(count)} ${isOne(count) ? 'st' : 'sts'}`;
}

function starExtent(extent: Extent): string {
  return extent.kind === 'as fits' ? '' : ` ${writeExtent(extent)}`;
}

function bindOffExtent(extent: Extent): string {
  if (extent.kind === 'times') return writeSized(extent.count);
  return extent.kind === 'to end' ? 'all sts' : writeExtent(extent);
}

function writeSized({values}: Sized): string {
  return bracketed(values.map(String));
}

function bracketed([first = '', ...others]: readonly string[]): string {
  return others.length === 0 ? first : `${first} (${others.join(', ')})`;
}
