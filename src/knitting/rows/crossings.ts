import type {Face, Strand} from './face.ts';
import type {Stitch} from './stitch.ts';
import {makeStitch} from './stitch-makers.ts';

/** Wider than any cable that is knitted; keeps absurd numbers from becoming one. */
const mostStitches = 60;

/**
 * `over`/`under` RC, LC, RPC or LPC: `over` stitches cross in front of `under` ones, which are purled in the P forms.
 * `between` is the middle strand of `2/1/2`, purled in the P forms. Null when too wide to be a cable.
 * Names as in the published abbreviation lists of the trade; C4B and T3F are their British names.
 */
export function makeCrossing(
  strands: readonly number[],
  direction: 'right' | 'left',
  isPurled: boolean,
): Stitch | null {
  const [over = 0, ...rest] = strands;
  const under = rest.at(-1) ?? 0;
  const between = rest.length === 2 ? (rest[0] ?? 0) : 0;
  const width = over + between + under;
  if (over < 1 || under < 1 || width > mostStitches) return null;

  const name = `${strands.join('/')} ${direction === 'right' ? 'R' : 'L'}${isPurled ? 'P' : ''}C`;
  const surface = isPurled ? 'purl' : 'knit';
  const lies: Strand[] = [{stitches: over, surface: 'knit'}];
  if (between > 0) lies.push({stitches: between, surface});
  lies.push({stitches: under, surface: between > 0 ? 'knit' : surface});
  const front = direction === 'left' ? 0 : lies.length - 1;
  const face: Face = {
    shape: 'crossing',
    strands: direction === 'left' ? lies : lies.reverse(),
    front,
  };
  return makeStitch(
    {
      american: name,
      british: britishName(over, between, under, direction, isPurled) ?? name,
      words: describe(over, between, under, direction, isPurled),
    },
    {uses: width, makes: width, kind: 'crossing', face},
  );
}

/** `C6F`, `T3B`, `Cr4F`: the whole width and where the cable needle is held; the wider half crosses in front. */
export function crossingOfWidth(
  width: number,
  direction: 'right' | 'left',
  form: 'C' | 'T' | 'Cr',
): Stitch | null {
  const over = form === 'Cr' ? width - 1 : Math.ceil(width / 2);
  return makeCrossing([over, width - over], direction, form !== 'C');
}

/** Two stitches change places without a cable needle. */
export const rightTwist = makeTwist('right');
export const leftTwist = makeTwist('left');

function makeTwist(direction: 'right' | 'left'): Stitch {
  const strands: Strand[] = [
    {stitches: 1, surface: 'knit'},
    {stitches: 1, surface: 'knit'},
  ];
  const how =
    direction === 'right'
      ? 'knit 2 together but leave them on the needle, knit the first again, slip both off'
      : 'knit the second stitch through the back loop, knit the first, slip both off';
  return makeStitch(
    {american: direction === 'right' ? 'RT' : 'LT', words: `${direction} twist: ${how}`},
    {
      uses: 2,
      makes: 2,
      kind: 'crossing',
      lean: direction,
      face: {shape: 'crossing', strands, front: direction === 'right' ? 1 : 0},
    },
  );
}

function britishName(
  over: number,
  between: number,
  under: number,
  direction: 'right' | 'left',
  isPurled: boolean,
): string | null {
  if (between > 0) return null;
  const width = over + under;
  const held = direction === 'right' ? 'B' : 'F';
  if (over === Math.ceil(width / 2)) return `${isPurled ? 'T' : 'C'}${width}${held}`;
  return isPurled && under === 1 ? `Cr${width}${held}` : null;
}

function describe(
  over: number,
  between: number,
  under: number,
  direction: 'right' | 'left',
  isPurled: boolean,
): string {
  const held = direction === 'right' ? 'back' : 'front';
  const hand = isPurled ? 'p' : 'k';
  if (between > 0) {
    const first = direction === 'right' ? between + under : over + between;
    const [near, far] = direction === 'right' ? [over, under] : [under, over];
    return (
      `slip ${first} to the cable needle and hold at the ${held}, k${near}, slip the last ${between} from the cable ` +
      `needle back to the left needle, ${hand}${between}, k${far} from the cable needle`
    );
  }
  return direction === 'right'
    ? `slip ${under} to the cable needle and hold at the back, k${over}, ${hand}${under} from the cable needle`
    : `slip ${over} to the cable needle and hold at the front, ${hand}${under}, k${over} from the cable needle`;
}
