import {plural} from '../support/plural.ts';
import type {EvenSpread, PlaceWork} from './spread-evenly.ts';
import {plainSteps, writeRow} from './write-row.ts';

/** What can be spread over a row, in the words of the trade. */
export type SpreadKind =
  | 'decreases'
  | 'bar increases'
  | 'raised increases'
  | 'yarn overs'
  | 'buttonholes'
  | 'beads'
  | 'markers';

export interface SpreadWork extends PlaceWork {
  /** The step as written in a row. */
  readonly step: string;
  /** One of them. */
  readonly one: string;
  readonly rowLabel: 'Dec' | 'Inc' | null;
  readonly needsNeighbours: boolean;
}

/**
 * Uses and makes as the trade's published abbreviation lists define them: k2tog 2 and 1, kfb 1 and 2, m1 0 and 1, yo 0
 * and 1. A buttonhole is bound off and cast on again in the next row; `width` is its stitches.
 */
export function spreadWork(kind: SpreadKind, width: number): SpreadWork {
  const plain = {rowLabel: null, needsNeighbours: false} as const;
  switch (kind) {
    case 'decreases':
      return {...plain, uses: 2, makes: 1, step: 'k2tog', one: 'decrease', rowLabel: 'Dec'};
    case 'bar increases':
      return {...plain, uses: 1, makes: 2, step: 'kfb', one: 'bar increase', rowLabel: 'Inc'};
    case 'raised increases':
      return {
        ...plain,
        uses: 0,
        makes: 1,
        step: 'm1',
        one: 'raised increase',
        rowLabel: 'Inc',
        needsNeighbours: true,
      };
    case 'yarn overs':
      return {
        ...plain,
        uses: 0,
        makes: 1,
        step: 'yo',
        one: 'yarn over',
        rowLabel: 'Inc',
        needsNeighbours: true,
      };
    case 'buttonholes':
      return {...plain, uses: width, makes: width, step: `bind off ${width}`, one: 'buttonhole'};
    case 'beads':
      return {...plain, uses: 1, makes: 1, step: 'pb', one: 'bead'};
    case 'markers':
      return {...plain, uses: 0, makes: 0, step: 'pm', one: 'marker'};
  }
}

/**
 * The row written out, in plain knitting between the places, with the count it leaves: `Dec row (RS): K4, *k2tog, k4;
 * rep from * 15 more times. (84 sts)`. Buttonholes give a second row that casts their stitches on again.
 */
export function writeSpread(
  spread: EvenSpread,
  kind: SpreadKind,
  width: number,
  inRound: boolean,
): readonly string[] {
  const work = spreadWork(kind, width);
  const count = `(${plural(spread.result, 'st')})`;
  const name = inRound ? 'rnd' : 'row';
  const label = work.rowLabel ? `${work.rowLabel} ${name}` : `${inRound ? 'Rnd' : 'Row'} 1`;
  const side = (which: string) => (inRound ? '' : ` (${which})`);
  if (kind !== 'buttonholes') {
    return [`${label}${side('RS')}: ${writeRow(stepsOf(spread.spaces, work.step, 'k', inRound))} ${count}`];
  }
  const bound = plural(spread.result - (spread.spaces.length - (inRound ? 0 : 1)) * width, 'st');
  const back = inRound ? spread.spaces : spread.spaces.toReversed();
  return [
    `${label}${side('RS')}: ${writeRow(stepsOf(spread.spaces, work.step, 'k', inRound))} (${bound})`,
    `${inRound ? 'Rnd' : 'Row'} 2${side('WS')}: ${writeRow(stepsOf(back, `cast on ${width}`, inRound ? 'k' : 'p', inRound))} ${count}`,
  ];
}

/** In the round every space has its place behind it; flat, all but the last. */
function stepsOf(
  spaces: readonly number[],
  step: string,
  hand: 'k' | 'p',
  inRound: boolean,
): readonly string[] {
  const places = spaces.length - (inRound ? 0 : 1);
  return spaces.flatMap((space, index) => [...plainSteps(space, hand), ...(index < places ? [step] : [])]);
}
