import type {Face} from './face.ts';
import type {Stitch} from './stitch.ts';
import {makeIncrease, makePlain, makeSlippedDecrease, makeStitch} from './stitch-makers.ts';

/** The stitches that have one fixed meaning. Uses, makes and meaning as in the published abbreviation lists. */
export const knit = makePlain('knit', false);
export const purl = makePlain('purl', false);
export const knitTwisted = makePlain('knit', true);
export const purlTwisted = makePlain('purl', true);
export const knitBelow = makeBelow('knit');
export const purlBelow = makeBelow('purl');

export const slip = makeSlip('sl', 'slip');
export const slipKnitwise = makeSlip('sl kwise', 'slip knitwise');
export const slipPurlwise = makeSlip('sl pwise', 'slip purlwise');

export const ssk = makeSlippedDecrease(
  {american: 'ssk', words: 'slip 2 knitwise one by one, knit them together through the back loops'},
  2,
  'left',
);
export const ssp = makeSlippedDecrease(
  {
    american: 'ssp',
    words: 'slip 2 knitwise one by one, return them, purl them together through the back loops',
  },
  2,
  'right',
  'purl',
);
export const sssk = makeSlippedDecrease(
  {american: 'sssk', words: 'slip 3 knitwise one by one, knit them together through the back loops'},
  3,
  'left',
);
export const sssp = makeSlippedDecrease(
  {
    american: 'sssp',
    words: 'slip 3 knitwise one by one, return them, purl them together through the back loops',
  },
  3,
  'right',
  'purl',
);
export const skp = makeSlippedDecrease(
  {american: 'skp', british: 'skpo', words: 'slip 1, knit 1, pass the slipped stitch over'},
  2,
  'left',
);
export const spp = makeSlippedDecrease(
  {american: 'spp', words: 'slip 1, purl 1, pass the slipped stitch over'},
  2,
  'right',
  'purl',
);
export const sk2p = makeSlippedDecrease(
  {american: 'sk2p', british: 'sk2po', words: 'slip 1, knit 2 together, pass the slipped stitch over'},
  3,
  'left',
);
export const s2kp = makeSlippedDecrease(
  {american: 's2kp', words: 'slip 2 together knitwise, knit 1, pass the 2 slipped stitches over'},
  3,
  'centre',
);
export const s2pp = makeSlippedDecrease(
  {
    american: 's2pp',
    words: 'slip 2 together through the back loops, purl 1, pass the 2 slipped stitches over',
  },
  3,
  'centre',
  'purl',
);

export const yarnOver = makeStitch(
  {
    american: 'yo',
    words: 'yarn over',
    britishWords: 'yarn over: yarn forward before a knit stitch, yarn round needle before a purl',
  },
  {uses: 0, makes: 1, kind: 'increase', hand: 'none', face: {shape: 'hole', loops: 1}},
);
export const makeOne = makeIncrease(
  {american: 'M1', words: 'make 1: lift the strand before the next stitch and knit it through the back loop'},
  [0, 1],
  'strand',
  null,
);
export const makeOneLeft = makeIncrease(
  {american: 'M1L', words: 'make 1 left: lift the strand from front to back, knit it through the back loop'},
  [0, 1],
  'strand',
  'left',
);
export const makeOneRight = makeIncrease(
  {
    american: 'M1R',
    words: 'make 1 right: lift the strand from back to front, knit it through the front loop',
  },
  [0, 1],
  'strand',
  'right',
);
export const makeOnePurl = makeIncrease(
  {american: 'M1P', words: 'make 1 purlwise: lift the strand and purl it through the back loop'},
  [0, 1],
  'strand',
  null,
  'purl',
);
export const makeOnePurlLeft = makeIncrease(
  {american: 'M1PL', words: 'make 1 purlwise left: lift the strand from front to back, purl it twisted'},
  [0, 1],
  'strand',
  'left',
  'purl',
);
export const makeOnePurlRight = makeIncrease(
  {american: 'M1PR', words: 'make 1 purlwise right: lift the strand from back to front, purl it twisted'},
  [0, 1],
  'strand',
  'right',
  'purl',
);
export const rightLifted = makeIncrease(
  {american: 'RLI', words: 'right lifted increase: knit into the right leg of the stitch below the next one'},
  [0, 1],
  'below',
  'right',
);
export const leftLifted = makeIncrease(
  {
    american: 'LLI',
    words: 'left lifted increase: knit into the left leg two rows below the stitch just worked',
  },
  [0, 1],
  'below',
  'left',
);
export const kfb = makeIncrease(
  {american: 'kfb', words: 'knit into the front and the back of the stitch'},
  [1, 2],
  'bar',
  'right',
);
export const pfb = makeIncrease(
  {american: 'pfb', words: 'purl into the front and the back of the stitch'},
  [1, 2],
  'bar',
  'right',
  'purl',
);
export const kfbf = makeIncrease(
  {american: 'kfbf', words: 'knit into the front, the back and the front of the stitch'},
  [1, 3],
  'many',
  null,
);
export const doubleStitch = makeStitch(
  {
    american: 'MDS',
    words: 'make a double stitch: slip 1, pull the yarn up over the needle so that both legs show',
  },
  {uses: 1, makes: 1, kind: 'slip', hand: 'slip', face: {shape: 'slip', yarn: 'front'}},
);
/** Off the needle and kept alive for later. */
export const hold = makeStitch(
  {american: 'hold', words: 'slip to a stitch holder or waste yarn'},
  {uses: 1, makes: 0, kind: 'drop', hand: 'none', face: {shape: 'bound off'}},
);
export const dropOne = makeStitch(
  {american: 'drop 1', words: 'let the next stitch or loop off the needle'},
  {uses: 1, makes: 0, kind: 'drop', hand: 'none', face: {shape: 'dropped'}},
);
export const bobble = makeStitch(
  {american: 'MB', words: 'make a bobble'},
  {uses: 1, makes: 1, kind: 'bobble', face: {shape: 'bobble'}, mustBeDefined: true},
);

export const asSet = makeAsSet('patt', 'work in the pattern as set', {shape: 'as below'});
export const asTheyFace = makeAsSet(
  'work sts as they face',
  'knit the knit stitches and purl the purl stitches as they face you',
  {shape: 'as below'},
);
export const stockinette = makeAsSet('St st', 'stockinette: knit on the right side, purl on the wrong side', {
  shape: 'texture',
  texture: 'stockinette',
});
export const reverseStockinette = makeAsSet(
  'rev St st',
  'reverse stockinette: purl on the right side, knit on the wrong side',
  {shape: 'texture', texture: 'reverse stockinette'},
);
export const garter = makeAsSet('g st', 'garter stitch: a ridge to every two rows', {
  shape: 'texture',
  texture: 'garter',
});

function makeBelow(surface: 'knit' | 'purl'): Stitch {
  return makeStitch(
    {american: surface === 'knit' ? 'k1b' : 'p1b', words: `${surface} into the stitch below the next one`},
    {uses: 1, makes: 1, kind: 'plain', hand: surface, face: {shape: 'loop below', surface}},
  );
}

function makeSlip(american: string, words: string): Stitch {
  return makeStitch(
    {american, words},
    {uses: 1, makes: 1, kind: 'slip', hand: 'slip', face: {shape: 'slip', yarn: 'back'}},
  );
}

function makeAsSet(american: string, words: string, face: Face): Stitch {
  return makeStitch({american, words}, {uses: 1, makes: 1, kind: 'as set', face});
}
