import {crossingOfWidth, leftTwist, makeCrossing, rightTwist} from './crossings.ts';
import type {Stitch} from './stitch.ts';
import {makeManyInOne, makeTogether, makeUntoldCrossing} from './stitch-makers.ts';
import * as stitches from './stitches.ts';

/** What a phrase of the trade says. */
export type Meaning =
  /** `isCounted`: the number in the phrase says how many, as in `k3 tbl`. */
  | {
      readonly says: 'stitch';
      readonly stitch: Stitch;
      readonly isCounted: boolean;
    }
  /** A stitch that the numbers make: `k3tog`, `2/1 RPC`. Null when there is no such stitch. */
  | {readonly says: 'made stitch'; readonly make: (numbers: readonly number[]) => Stitch | null}
  /** All the stitches that are left, `the rest plain`. */
  | {readonly says: 'remainder'; readonly stitch: Stitch}
  /** `times` yarn overs. */
  | {readonly says: 'overs'; readonly times: number | 'number'}
  | {readonly says: 'yarn forward'}
  | {readonly says: 'yarn'; readonly to: 'front' | 'back'}
  | {readonly says: 'slip together'}
  /** `said`: one stitch, or all that were slipped when the text speaks of stitches. */
  | {readonly says: 'pass over'; readonly over: number | 'number' | 'said'}
  | {readonly says: 'bind off' | 'cast on' | 'pick up' | 'into' | 'cable needle' | 'nothing'}
  | {readonly says: 'marker'; readonly action: 'place' | 'slip' | 'remove'}
  | {readonly says: 'turn'; readonly how: 'plain' | 'wrapped'}
  | {
      readonly says: 'at edges';
      readonly change: 'increase' | 'decrease' | 'make';
      readonly where: 'start' | 'end' | 'both';
    }
  | {readonly says: 'evenly'; readonly change: 'increase' | 'decrease'};

export interface VocabularyLine {
  readonly meaning: Meaning;
  /** In the notation of `phrase-tree.ts`. */
  readonly phrases: readonly string[];
}

/** The phrases of a table, parted by commas; `(,)` is a comma that may stand in the phrase itself. */
export function phraseList(phrases: string): string[] {
  return phrases.split(/,(?!\))/).map((phrase) => phrase.trim());
}

/** One stitch, and every way the trade writes it. `#` in a phrase says how many. */
function one(stitch: Stitch, phrases: string): VocabularyLine {
  return {meaning: {says: 'stitch', stitch, isCounted: false}, phrases: phraseList(phrases)};
}

function counted(stitch: Stitch, phrases: string): VocabularyLine {
  return {meaning: {says: 'stitch', stitch, isCounted: true}, phrases: phraseList(phrases)};
}

function made(make: (numbers: readonly number[]) => Stitch | null, phrases: string): VocabularyLine {
  return {meaning: {says: 'made stitch', make}, phrases: phraseList(phrases)};
}

function together(surface: 'knit' | 'purl', isTwisted: boolean) {
  return ([from = 0]: readonly number[]) =>
    from >= 2 && from <= 60 ? makeTogether(surface, from, isTwisted) : null;
}

/** All the stitches that are left are worked so. */
function remainder(stitch: Stitch, phrases: string): VocabularyLine {
  return {meaning: {says: 'remainder', stitch}, phrases: phraseList(phrases)};
}

/** `k5 in next st`: so many into one. */
function manyInOne([into = 0]: readonly number[]): Stitch | null {
  if (into === 2) return stitches.kfb;
  if (into === 3) return stitches.kfbf;
  return into > 3 && into <= 20 ? makeManyInOne(into) : null;
}

/** A cable of which only the width is told. */
function crossOf([width = 0]: readonly number[]): Stitch | null {
  return width >= 2 && width <= 60 ? makeUntoldCrossing(width) : null;
}

function cable(direction: 'right' | 'left', isPurled: boolean) {
  return (strands: readonly number[]) => makeCrossing(strands, direction, isPurled);
}

function wide(form: 'C' | 'T' | 'Cr', direction: 'right' | 'left') {
  return ([width = 0]: readonly number[]) => crossingOfWidth(width, direction, form);
}

/**
 * Stitches, Victorian and modern, British and American, in the normal words of `normal-words.ts`. Meanings as in the
 * published abbreviation lists; old words as the needlework books of 1840 to 1890 use them.
 */
export const stitchVocabulary: readonly VocabularyLine[] = [
  one(
    stitches.knit,
    'k wrap st tog with (its) wrap, k next|1 st tog with (its) wrap, k st tog with (its) wrap, k, k ds, k double st, work ds, plain, a plain, k plain, plain k, all k, all plain, all st k, plain st, k slantways, last|1 st (is|to) (be) k, edge st (is) (k) plain',
  ),
  one(
    stitches.purl,
    'p wrap st tog with (its) wrap, p next|1 st tog with (its) wrap, p st tog with (its) wrap, p, p ds, p double st, p plain, a p, back st, all p, all st p, turn st',
  ),
  counted(stitches.knit, '# plain, # plain st, # k, plain #, k plain #, k # slantways'),
  counted(stitches.purl, '# p, # p st, b #'),
  remainder(
    stitches.knit,
    'remainder (of) (row|round|st|needle) (are|is|to) (be) (k) plain|k, finish (row|round) plain, all remain st plain, remain st plain',
  ),
  remainder(stitches.purl, 'remainder (of) (row|round|st|needle) (are|is|to) (be) p'),
  one(stitches.knitTwisted, 'ktbl, tk, tw k, k tbl, k b loop, k twist, twist k, k 1 twist'),
  one(stitches.purlTwisted, 'ptbl, tp, p tbl, p b loop, p twist, twist p'),
  counted(
    stitches.knitTwisted,
    `
    k # tbl, k tbl #, k # st tbl, kb #, k # (st) through|in|from|at (their) back (of) (st|loop),
    k in|into back of # (st)`,
  ),
  counted(
    stitches.purlTwisted,
    `
    p # tbl, p tbl #, p # st tbl, pb #, p # (st) through|in|from|at (their) back (of) (st|loop),
    p in|into back of # (st)`,
  ),
  one(
    stitches.knitBelow,
    `
    k 1 b, kb, k below, k 1 below, k b, k 1 (st) in row|st below, k (next) (st) in row|st below`,
  ),
  one(
    stitches.purlBelow,
    `
    p 1 b, pb, p below, p 1 below, p 1 (st) in row|st below, p (next) (st) in row|st below`,
  ),
  one(stitches.slip, 'sl, sl st'),
  counted(stitches.slip, 's #'),
  one(stitches.slipKnitwise, 'slk, sl kwise, sl k, slkw'),
  one(stitches.slipPurlwise, 'slp, sl pwise, sl p, slpw'),
  counted(stitches.slipKnitwise, 'sl # (st) kwise, sl # (st) k wise, sl # (st) as if to k, sl # kw'),
  counted(stitches.slipPurlwise, 'sl # (st) pwise, sl # (st) p wise, sl # (st) as if to p, sl # pw'),

  made(
    together('knit', false),
    `
    k # tog, k # t, take # (st) tog, take in # (st), k # (next) st tog, k next|1|last # (st) tog, k tog # (st),
    k tog next|1|last # (st), k # (st) tog in front, k # in 1, k # as 1 (st), k # (st) tog as 1 (st),
    k tog # (st) as 1 (st), k # st as|in 1, dec # st in 1`,
  ),
  made(
    together('purl', false),
    `
    p # tog, p # t, p # (next) st tog, p next|1|last # (st) tog, p tog # (st), p tog next|1|last # (st), p # in 1,
    p # as 1 (st), p # st as|in 1`,
  ),
  made(
    together('knit', true),
    `
    k # tog tbl, k # togtbl, k # togb, k # tog b, k # st tog tbl, k # tbl tog, k # (st) tog
    through|in|from|at (their) back (of) (st|loop)`,
  ),
  made(
    together('purl', true),
    `
    p # tog tbl, p # togtbl, p # togb, p # tog b, p # st tog tbl, p # (st) tog through|in|from|at
    (their) back (of) (st|loop)`,
  ),
  made(() => makeTogether('knit', 2, true), 't b, tb'),
  made(
    () => makeTogether('knit', 2, false),
    'n, n 1, n 1 st, take in, take in 1, take in 1 st, k tog, dec, dec 1, dec 1 st, d 1',
  ),
  one(stitches.ssk, 'ssk, s s k, sl sl k'),
  one(stitches.ssp, 'ssp, sl sl p'),
  one(stitches.sssk, 'sssk, ssskk, sl sl sl k'),
  one(stitches.sssp, 'sssp'),
  one(stitches.skp, 'skp, skpo, skpsso, sl 1 k 1 psso, sl 1 k psso, s 1 k 1 psso, sl & b, sl & bo, s & b'),
  one(stitches.spp, 'spp, sl 1 p 1 psso'),
  one(
    stitches.sk2p,
    'sk 2 p, sk 2 po, sk 2 togpo, sl 1 k 2 tog psso, sl 1 n psso, s 1 k 2 tog psso, sl (1) (,) n (,) & bo|b, s n & b',
  ),
  one(
    stitches.s2kp,
    `
    s 2 kp, s 2 kp 2, s 2 kpo, s 2 k 1 p, cdd, sl 2 k 1 p 2 sso, sl 2 tog k 1 p 2 sso, s 2 k 1 p 2
    sso`,
  ),
  one(stitches.s2pp, 's 2 pp, s 2 pp 2, sl 2 p 1 p 2 sso'),

  one(
    stitches.makeOne,
    `
    m 1, m 1 k, make 1, make (a|1) st, make 1 st, inc 1 (st) by lift|lifting|picking|pick (up) (a) strand|bar|loop|yarn,
    m|make|inc (1) (st) (,) by lift|lifting|picking|pick|taking|raising (up) (a) strand|bar|loop|yarn (between|before) (next) (#) (st),
    pick up 1 (st|loop), pick up a st, lift|raise 1 loop, pick up loop (between) (st), pick up (a) loop & k it,
    lift|pick (up) bar|strand|loop|yarn between (st|needle) & k (in|into) (back) (of) (it|loop), inc 1 (st) between st`,
  ),
  one(stitches.makeOneLeft, 'm 1 l, ml, m 1 leave, make 1 leave, m 1 kl'),
  one(stitches.makeOneRight, 'm 1 r, mr, m 1 right, make 1 right, m 1 kr'),
  one(stitches.makeOnePurl, 'm 1 p, mp, m 1 pwise, make 1 pwise, m 1 p st'),
  one(stitches.makeOnePurlLeft, 'm 1 pl, m 1 lp, m 1 p leave, mpl'),
  one(stitches.makeOnePurlRight, 'm 1 pr, m 1 rp, m 1 p right, mpr'),
  one(stitches.rightLifted, 'rli, k rli, krli, rinc, right lifted inc'),
  one(stitches.leftLifted, 'lli, k lli, klli, linc, leave lifted inc'),
  one(
    stitches.kfb,
    `
    kfb, kf & b, k 1 f & b, k 1 fb, k f & b, inc, inc 1, inc 1 st, inc k, inc 1 k, k (1) in|into front & (in|into) back (of) (next|1|same|last) (st), k (1) in|into front & (in|into) back (of), k 1 in front then back (of) (st), k front & back, bar inc, k in
    front & in back of next st, inc (1) (st) (,) by k (1) (in|into) front & (in|into) back (of) (next|1|same|last|first) (st),
    k twice in|into (next|same|last|1) st, k twice in|into next|same|it, inc (1) in|into next|same|last|first|1 (st)`,
  ),
  one(
    stitches.pfb,
    `
    pfb, pf & b, p 1 f & b, p 1 fb, p f & b, inc p, inc pwise, inc 1 p, inc 1 pwise, p (1) in|into front & (in|into) back (of) (next|1|same|last) (st), p (1) in|into front & (in|into) back (of), p front & back`,
  ),
  one(
    stitches.kfbf,
    'kfbf, k 1 fbf, k 1 f b f, k front back front, k front (,) back (,) & front, k in|into front (,) back (,) & front (again) (of) (next|same|1) (st), k in|into front & back & front (again) (of) (next|same|1) (st)',
  ),
  made(
    manyInOne,
    `
    k # in|into next|same (1) (st), k|work # time in|into next|same (1) (st), k # time in|into 1 st, inc to # (st)`,
  ),
  one(stitches.doubleStitch, 'mds, make (a) ds, make (a) double st'),
  one(
    stitches.dropOne,
    `
    drop, drop 1, drop 1 st, drop (next) st, drop (1) (extra) loop, drop yo, drop 1 yo, let st drop,
    let 1 st drop`,
  ),
  counted(
    stitches.hold,
    `
    sl|place|put|leave (next|first|last|center|centre) # (st) on|onto|to|in (a) (spare|another) (st) holder|needle|pin (for) (front|back|left|right) (neck|thumb|shoulder|sleeve),
    sl|place|put|leave (next|first|last|center|centre) # (st) on|onto|to (a) (piece) (of) (waste|spare|scrap) yarn (for) (front|back|left|right) (neck|thumb|shoulder|sleeve)`,
  ),
  one(stitches.hold, 'hold, hold 1 st'),
  one(stitches.bobble, 'mb, make bobble, make (a) bobble, bobble, make 1 bobble'),

  made(cable('right', false), 'c # / # r, # / # rc, # / # / # rc, # / # right cross'),
  made(cable('left', false), 'c # / # l, # / # lc, # / # / # lc, # / # leave cross'),
  made(cable('right', true), '# / # rpc, # / # / # rpc, # / # rcp, # / # rpt'),
  made(cable('left', true), '# / # lpc, # / # / # lpc, # / # lcp, # / # lpt'),
  made(wide('C', 'right'), 'c # b, c # r, cable # back, cable # b, c # back, cross # right|back'),
  made(wide('C', 'left'), 'c # f, c # l, cable # front, cable # f, c # front, cross # leave|front'),
  made(crossOf, 'c #, cable #, cross # (st), cable # st'),
  made(wide('T', 'right'), 't # b, t # r, tw # b, twist # back'),
  made(wide('T', 'left'), 't # f, t # l, tw # f, twist # front'),
  made(wide('Cr', 'right'), 'cr # b, cr # r'),
  made(wide('Cr', 'left'), 'cr # f, cr # l'),
  one(
    rightTwist,
    `
    rt, # / # rt, right twist, twist right, tw 2 r, tw 2 right, twist 2 right, t 2 right, tw 2, twist 2, twist 2 st`,
  ),
  one(
    leftTwist,
    `
    lt, # / # lt, leave twist, twist leave, tw 2 l, tw 2 leave, twist 2 leave, t 2 leave`,
  ),
];
