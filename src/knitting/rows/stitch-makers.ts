import type {Face, Lean} from './face.ts';
import type {Stitch, StitchKind} from './stitch.ts';

interface Wording {
  readonly american: string;
  readonly british?: string;
  readonly words: string;
  readonly britishWords?: string;
}

interface Facts {
  readonly uses: number;
  readonly makes: number;
  readonly kind: StitchKind;
  readonly face: Face;
  readonly hand?: Stitch['hand'];
  readonly lean?: Lean;
  readonly mustBeDefined?: boolean;
}

/** A stitch under its American abbreviation; the British name is the same unless given. */
export function makeStitch(wording: Wording, facts: Facts): Stitch {
  const {american, british = american, words, britishWords = words} = wording;
  const {uses, makes, kind, face, hand = 'knit', lean = null, mustBeDefined = false} = facts;
  const names = {
    american: {abbreviation: american, words},
    british: {abbreviation: british, words: britishWords},
  };
  return {id: american, names, uses, makes, kind, lean, face, hand, mustBeDefined};
}

/** Knit or purl, plain or through the back loop. */
export function makePlain(surface: 'knit' | 'purl', isTwisted: boolean): Stitch {
  const abbreviation = surface === 'knit' ? 'k' : 'p';
  return makeStitch(
    isTwisted
      ? {american: `${abbreviation} tbl`, words: `${surface} through the back loop`}
      : {american: abbreviation, words: surface},
    {uses: 1, makes: 1, kind: 'plain', hand: surface, face: {shape: 'loop', surface, twisted: isTwisted}},
  );
}

/**
 * `k2tog`, `p3tog tbl`, … of any number. Seen from the side on which it is worked, knitting together leans right and
 * purling together leans left; through the back loops each leans the other way and is twisted.
 */
export function makeTogether(surface: 'knit' | 'purl', from: number, isTwisted: boolean): Stitch {
  const letter = surface === 'knit' ? 'k' : 'p';
  const lean: Lean = (surface === 'knit') === isTwisted ? 'left' : 'right';
  const loops = isTwisted ? ' through the back loops' : '';
  return makeStitch(
    {american: `${letter}${from}tog${isTwisted ? ' tbl' : ''}`, words: `${surface} ${from} together${loops}`},
    {
      uses: from,
      makes: 1,
      kind: 'decrease',
      hand: surface,
      lean,
      face: {shape: 'decrease', from, into: 1, lean, surface, twisted: isTwisted},
    },
  );
}

/** A decrease by slipping: `ssk`, `sk2p`, `s2kp`, `ssp` and their like. */
export function makeSlippedDecrease(
  wording: Wording,
  from: number,
  lean: Lean,
  surface: 'knit' | 'purl' = 'knit',
): Stitch {
  const face: Face = {shape: 'decrease', from, into: 1, lean, surface, twisted: false};
  return makeStitch(wording, {uses: from, makes: 1, kind: 'decrease', hand: surface, lean, face});
}

type Method = 'bar' | 'strand' | 'below' | 'many';

export function makeIncrease(
  wording: Wording,
  [uses, makes]: readonly [number, number],
  method: Method,
  lean: Lean | null,
  surface: 'knit' | 'purl' = 'knit',
): Stitch {
  const face: Face = {shape: 'increase', from: uses, into: makes, lean, surface, method};
  return makeStitch(wording, {uses, makes, kind: 'increase', hand: surface, face, ...(lean && {lean})});
}

/** So many worked into one stitch, in whichever way the pattern explains. */
export function makeManyInOne(into: number): Stitch {
  return makeIncrease(
    {american: `k${into} in 1`, words: `knit ${into} times into one stitch`},
    [1, into],
    'many',
    null,
  );
}

/** A crossing of so many stitches whose direction is told elsewhere, if at all. */
export function makeUntoldCrossing(width: number, words = `cross ${width} stitches`): Stitch {
  return makeStitch(
    {american: `cross ${width}`, words},
    {uses: width, makes: width, kind: 'crossing', face: {shape: 'own', from: width, into: width}},
  );
}
