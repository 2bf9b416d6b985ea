import {type Ends, type EvenSpread, spreadEvenly} from '../knitting/spread-evenly.ts';
import {type Rib, spreadInRib} from '../knitting/spread-in-rib.ts';
import {type SpreadKind, spreadWork, writeSpread} from '../knitting/spread-work.ts';
import {stitches} from '../knitting/units.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {count, oneOf, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, required, withDefault} from './attributes.ts';

const kinds = [
  'decreases',
  'bar increases',
  'raised increases',
  'yarn overs',
  'buttonholes',
  'beads',
  'markers',
] as const satisfies readonly SpreadKind[];

/** `::spread`: increases, decreases, buttonholes, beads or markers over a row or round, with the row written out. */
export const spreadTable = arithmeticTable({
  id: 'spread',
  summary: 'increases, decreases, buttonholes, beads or markers spread evenly, with the row written out',
  example: '::spread{work="decreases" times=16 over=100}',
  attributes: {
    work: required(oneOf(...kinds)),
    times: required(count),
    over: required(count),
    shape: withDefault(oneOf('flat', 'round'), 'flat'),
    ends: optional(endsOf),
    width: optional(count),
    rib: optional(ribOf),
  },
  compute({work, times, over, shape, ends, width, rib}) {
    const isButtonhole = work === 'buttonholes';
    if (isButtonhole && (width ?? 0) === 0) {
      return unreadable(
        'the width of a buttonhole is not said',
        'Write how many stitches it takes, such as `width=4`.',
      );
    }
    if (!isButtonhole && (width !== null || rib !== null)) {
      return unreadable(
        `\`width\` and \`rib\` are for buttonholes, and the work is \`${work}\``,
        'Leave them out, or write `work="buttonholes"`.',
      );
    }
    if (rib) return inRib({over, times, width: width ?? 0, rib, isPlain: shape === 'flat' && ends === null});
    if (shape === 'round' && ends !== null) {
      return unreadable('a round has no ends', 'Leave `ends` out, or write `shape="flat"`.');
    }
    const places = spreadWork(work, width ?? 0);
    const spread = spreadEvenly({
      stitches: stitches(over),
      places: times,
      work: places,
      ends: shape === 'round' ? null : (ends ?? 'half'),
      needsNeighbours: places.needsNeighbours,
    });
    if (!spread.ok) return spread;
    return success(
      spreadFigure(
        {work, times, over, width: width ?? 0, ends: ends ?? 'half', isRound: shape === 'round'},
        spread.value,
      ),
    );
  },
});

interface SpreadInputs {
  readonly work: SpreadKind;
  readonly times: number;
  readonly over: number;
  readonly width: number;
  readonly ends: Ends;
  readonly isRound: boolean;
}

function spreadFigure(inputs: SpreadInputs, spread: EvenSpread): ComputedTable {
  const {work, times, over, width, ends, isRound} = inputs;
  const {uses, makes, one, step} = spreadWork(work, width);
  const each = `${step}: takes ${plural(uses, 'stitch', 'stitches')}, leaves ${makes}`;
  const plain = over - times * uses;
  const [first, last] = [spread.spaces[0] ?? 0, spread.spaces.at(-1) ?? 0];
  return arithmeticFigure({
    name: 'spread',
    caption: `${plural(times, one)} over ${over} stitches, spread evenly ${isRound ? 'in the round' : 'along the row'}`,
    given: [
      ['Stitches', `${over}`],
      ['Worked', `${plural(times, one)} (${each})`],
      ['Ends', isRound ? 'none: the round closes' : endWords(ends)],
    ],
    result: [
      ['Plain stitches', `${over} − ${times} × ${uses} = ${plain}`],
      ['Between', betweenWords(spread)],
      ...(isRound ? [] : [['At the ends', `${first} before the first, ${last} behind the last`] as const]),
      ['Afterwards', `${plain} + ${times} × ${makes} = ${plural(spread.result, 'stitch', 'stitches')}`],
    ],
    instructions: [...writeSpread(spread, work, width, isRound), ...notes(work)],
    formulas: [
      `Plain stitches: stitches − times × stitches taken. They are shared over ${isRound ? 'as many spaces as places' : `the spaces between${endsIn(ends)}`}: before a place stand all plain stitches × its part of the way, cut to a whole stitch.`,
    ],
    rounding:
      'Nothing is lost: the spaces add up to the plain stitches, and no two between the places differ by more than one.',
    source: `Source: plain arithmetic.${ends === 'half' && !isRound ? ' Half a space at the ends is common practice, no source.' : ''}`,
  });
}

function betweenWords({between}: EvenSpread): string {
  if (!between) return 'one place only';
  const {shortest, longest} = between;
  if (shortest === longest) return `${plural(shortest, 'stitch', 'stitches')} each time`;
  return `${shortest} or ${longest} stitches`;
}

function endsIn(ends: Ends): string {
  if (typeof ends === 'number') return ', the ends taken off';
  return ends === 'half' ? ' and two half ones at the ends' : ' and two more at the ends';
}

function endWords(ends: Ends): string {
  if (typeof ends === 'number') return `${plural(ends, 'stitch', 'stitches')} at each end`;
  return ends === 'half' ? 'half a space at each end' : 'a whole space at each end';
}

function notes(work: SpreadKind): readonly string[] {
  if (work === 'buttonholes') {
    return ['The stitch left on the right needle after binding off is the first of the k behind it.'];
  }
  if (work === 'beads') return ['pb: place a bead on the next stitch and work it.'];
  if (work === 'bar increases')
    return ['The increase uses the stitch it is worked into; its bar lies behind that stitch.'];
  return [];
}

function inRib({
  over,
  times,
  width,
  rib,
  isPlain,
}: {
  readonly over: number;
  readonly times: number;
  readonly width: number;
  readonly rib: Rib;
  readonly isPlain: boolean;
}): Result<ComputedTable> {
  if (!isPlain) {
    return unreadable(
      'in a rib the ends follow the ribs',
      'Leave `ends` and `shape` out when `rib` is written.',
    );
  }
  const result = spreadInRib({stitches: stitches(over), rib, buttonholes: times, width});
  if (!result.ok) return result;
  const {ribs, free, boundOff, castOn} = result.value;
  const lines: readonly FigureLine[] = [
    ['In the purl ribs', `number ${englishList(ribs.map(String))}`],
    [
      'Purl ribs left free',
      `${free[0] ?? 0} before the first, ${englishList(free.slice(1, -1).map(String)) || 'none'} between, ${free.at(-1) ?? 0} behind the last`,
    ],
  ];
  return success(
    arithmeticFigure({
      name: 'spread',
      caption: `${plural(times, 'buttonhole')} in the purl ribs of ${over} stitches`,
      given: [
        ['Stitches', `${over}`],
        ['Rib', `k${rib.knit}, p${rib.purl} on the right side`],
        ['Buttonholes', `${times}, ${plural(width, 'stitch', 'stitches')} wide`],
      ],
      result: lines,
      instructions: [boundOff, castOn, ...notes('buttonholes')],
      formulas: [
        'The free purl ribs are shared over the spaces between the buttonholes and two half ones at the ends. Each buttonhole has as many purl stitches before it in its rib as behind it.',
      ],
      rounding:
        'Nothing is lost: the ribs add up, and no two spaces between the buttonholes differ by more than one rib.',
      source: 'Source: plain arithmetic.',
    }),
  );
}

function endsOf(text: string): Result<Ends> {
  const word = text.trim();
  return word === 'half' || word === 'whole' ? success(word) : count(text);
}

function ribOf(text: string): Result<Rib> {
  const {knit, purl} = /^\s*k\s*(?<knit>\d{1,3})\s*,?\s*p\s*(?<purl>\d{1,3})\s*$/i.exec(text)?.groups ?? {};
  return knit === undefined || purl === undefined
    ? unreadable(
        `\`${text}\` is not a rib`,
        'Write the rib as its right side is worked, such as `rib="k2, p2"`.',
      )
    : success({knit: Number(knit), purl: Number(purl)});
}
