import {addPhrase, makePhraseTree, type PhraseTree} from './phrase-tree.ts';
import type {Stitch} from './stitch.ts';
import * as stitches from './stitches.ts';
import {type Meaning, phraseList, stitchVocabulary, type VocabularyLine} from './vocabulary.ts';

function says(meaning: Meaning, phrases: string): VocabularyLine {
  return {meaning, phrases: phraseList(phrases)};
}

function asSet(stitch: Stitch, phrases: string): VocabularyLine {
  return {meaning: {says: 'stitch', stitch, isCounted: false}, phrases: phraseList(phrases)};
}

/** Everything in a row that is not a stitch with one plain meaning. */
const otherPhrases: readonly VocabularyLine[] = [
  says(
    {says: 'overs', times: 1},
    `
    yo, over, yon, yrn, yfrn, yfon, wrn, won, wo, wrap yarn, yarn over, yarn over needle, yarn round
    needle, yarn around needle, yarn round, yfo, wfo, yo 1, over 1, turn over, turn over 1, turn
    yarn round needle, turn yarn over needle, turn yarn round, turn yarn round needle so as to bring
    it in front again, turn yarn round needle as to bring it in front again, turn yarn round needle
    (as) to bring it in front (again), pass yarn round needle, pass yarn over needle, pass yarn
    over, take yarn over needle, throw yarn over (needle), cast over, cast yarn over (needle), bring yarn over needle,
    bring yarn over, bring yarn round needle, bring yarn fwd & round needle, bring yarn fwd over
    needle, yarn fwd & round needle, yarn fwd over needle, yarn fwd round needle, yfwd round needle,
    over needle, t o, tto, raise, raise 1`,
  ),
  says(
    {says: 'overs', times: 1},
    'tho, t t o, yarn o, yarn over 1, put over, make 1 (,) by pass yarn round (needle)',
  ),
  says(
    {says: 'overs', times: 'number'},
    `
    yo #, y # rn, y # on, over #, # yo, # over, # overs, make #, make # st, o #, yrn #, m #, tho #,
    yarn # time round|around|over (needle), bring|turn|pass|take|throw|cast yarn # time round|around|over (needle)`,
  ),
  says(
    {says: 'overs', times: 2},
    `
    yarn twice round|around|over (needle), bring|turn|pass|take|throw|cast yarn twice round|around|over (needle),
    double over, double yo, a double over|yo`,
  ),
  says(
    {says: 'overs', times: 3},
    'yarn thrice round|around|over (needle), bring|turn|pass|take|throw yarn thrice round|around|over (needle)',
  ),
  says(
    {says: 'yarn forward'},
    `
    yf, yfwd, yfd, yft, wf, wfwd, wfd, yarn fwd, bring yarn fwd, bring yarn in front, yarn to front,
    yarn in front, bring yarn to front, tf, wool fwd, take|pass|throw|cast|turn yarn fwd, bring yarn to
    front of work, ytf, fwd, w fwd, w f, yarn f, t f, bring fwd, yarn before, bring yarn before`,
  ),
  says(
    {says: 'yarn', to: 'back'},
    `
    yb, ybk, ytb, wb, wbk, yarn back, yarn to back, bring yarn to back (of) (work), take yarn (to)
    back (of) (work), pass yarn (to) back (of) (work), bring yarn back`,
  ),
  says({says: 'yarn', to: 'back'}, 'with yarn in|at back (of) (work), wyib'),
  says({says: 'yarn', to: 'front'}, 'with yarn in|at front (of) (work), wyif'),
  says(
    {says: 'slip together'},
    `
    sl # (st) tog (kwise|pwise), sl # (st) tog as if to k, sl # (st) kwise tog, sl # (st) (at) (1)
    once as if to k, sl # as if to k 2 tog`,
  ),
  says(
    {says: 'pass over', over: 'said'},
    `
    psso (both|them|tog), pass yo over (last|next) (2|#) (k|p) (st), p s s o, p s s over, p 1 sso,
    pass|lift|bring|take|sl|throw|bo|pull (both|all) sl (st|1|loop) (back) over (it|them|both|all) (last|next|1|#) (k|p|made) (st|1|loop|ones) (tog),
    pass|lift|bring|take|sl|bo (it|1|them) over (it|them|both) (last|next|1|#) (k|p|made) (st|1|loop|ones) (tog),
    pass|lift|bring|take|sl|bo 1 st over (second) (last|next|#) (k) (st), pass both over, pass sl|1 1 over (it|them)`,
  ),
  says({says: 'pass over', over: 'number'}, 'p # sso, pass # sl st over, pass sl # over'),

  says({says: 'bind off'}, 'bo, bo off, cast off, cast of, bo of, cast or bo off'),
  says({says: 'cast on'}, 'co, cast on, caston, cable cast on, backward loop cast on'),
  says({says: 'pick up'}, 'pick up & k, pick up, pu, pu & k, pick up & p, puk'),
  says(
    {says: 'marker', action: 'place'},
    'pm, place (a) marker, place m, place (a) marker for begin of round',
  ),
  says({says: 'marker', action: 'slip'}, 'sm, slm, sl marker, sl m, pass marker, sl (a) marker'),
  says({says: 'marker', action: 'remove'}, 'rm, remove marker, remove m'),
  says(
    {says: 'turn', how: 'wrapped'},
    `
    w & t, wt, wrap & turn, wrap (next) st & turn, wrap 1 & turn, wrap next st turn`,
  ),
  says({says: 'turn', how: 'plain'}, 'turn, turn work, turn back, turn &'),

  asSet(
    stitches.asSet,
    `
    patt, work in pattern, in pattern, pattern, work (in) pattern as establish, work as establish,
    work in pattern as establish, work even in pattern, continue in pattern (as) (establish), keep
    pattern correct, work even, work straight, in pattern as establish, work in establish pattern,
    in establish pattern, work in establish rib, in rib, work in rib, rib, rib as establish, work
    rib, work in rib as establish, work in rib pattern, moss st, work in moss st, in moss st, seed
    st, work in seed st, work, work across, pattern as establish, work row|round # (of|from) chart|pattern (a|b|c|d),
    work wrap|next|1 st (tog) with its wrap, work wrap st, work chart (row|round) (#), work chart a|b|c|d, work row|round # (of) chart a|b|c|d`,
  ),
  asSet(
    stitches.asTheyFace,
    `
    k k & p p, k k st & p p st, k k p p, work st as they face|present|appear|come, work st as they
    present themselves, work all st as they face|present|appear, work each st as it
    faces|presents|appears, st as they face|present|appear, k k st p p st, work st as establish, k all k (st) & p all p (st), k over k & p over p`,
  ),
  asSet(
    stitches.stockinette,
    `
    st st, in st st, work in st st, stocking st, in stocking st, work in stocking st, stockinette,
    work in stockinette, in stockinette, stockinette st, in stockinette st, work in stockinette st,
    continue in st st, work st st`,
  ),
  asSet(
    stitches.reverseStockinette,
    `
    rev st st, in rev st st, work in rev st st, reverse stocking st, reverse st st, in reverse st
    st, work in reverse st st, work in reverse stockinette (st), in reverse stockinette (st),
    reverse stockinette (st)`,
  ),
  asSet(
    stitches.garter,
    `
    g st, gst, garter st, in g st, in garter st, work in garter st, work in g st, garter`,
  ),

  says(
    {says: 'at edges', change: 'increase', where: 'both'},
    `
    inc (1) (st) (once) (at|in|on) each|both end|ends|side|sides (of) (row), inc (1) (st) (once) (at|in) begin & end (of) (row), inc 1 st at
    each side, inc 1 at each side`,
  ),
  says(
    {says: 'at edges', change: 'decrease', where: 'both'},
    `
    dec (1) (st) (once) (at|in|on) each|both end|ends|side|sides (of) (row), dec (1) (st) (once) (at|in) begin & end (of) (row), dec 1 st at
    each side, k 2 tog at each|both end|ends (of) (row), k 2 tog at begin & end (of) (row),
    n (once) (at) each|both end|ends (of) (row), n at begin & end (of) (row)`,
  ),
  says({says: 'at edges', change: 'increase', where: 'start'}, 'inc (1) (st) (at|in) begin (of) (row)'),
  says(
    {says: 'at edges', change: 'decrease', where: 'start'},
    'dec (1) (st) (at|in) begin (of) (row), n at begin (of) (row), k 2 tog at begin (of) (row)',
  ),
  says({says: 'at edges', change: 'increase', where: 'end'}, 'inc (1) (st) (at|in) end (of) (row)'),
  says(
    {says: 'at edges', change: 'decrease', where: 'end'},
    'dec (1) (st) (at|in) end (of) (row), n at end (of) (row), k 2 tog at end (of) (row)',
  ),
  says(
    {says: 'at edges', change: 'make', where: 'start'},
    'make (a|1) (st|1) at begin (of) (row), make at begin',
  ),
  says({says: 'at edges', change: 'make', where: 'end'}, 'make (a|1) (st|1) at end (of) (row)'),
  says(
    {says: 'at edges', change: 'make', where: 'both'},
    `
    make (a|1) (st|1) at each end (of) (row), make (a|1) (st|1) at both ends (of) (row)`,
  ),
  says(
    {says: 'evenly', change: 'increase'},
    `
    inc # (st) evenly (spaced) (across|round|around|along) (row|round), inc # (st) evenly (spaced) over row`,
  ),
  says(
    {says: 'evenly', change: 'decrease'},
    `
    dec # (st) evenly (spaced) (across|round|around|along) (row|round), dec # (st) evenly (spaced) over row`,
  ),

  says(
    {says: 'into'},
    `
    in|into (all) (1) (next|same|first|last|1) st|one, in|into same, all in|into
    (next|same|1|first|last) (1) st, all in|into 1 st, in|into next # st, all in|into next # st,
    in|into # st, in|into double yo, in|into double over, in|into next, in|into (1) yo, in|into
    over, all in|into 1, in|into 1 st, in|into made loop|st, in|into # made loop|st`,
  ),
  says(
    {says: 'cable needle'},
    `
    sl # (st) on|onto|to|in (to) (a) cn, sl|pass|place|take # (st) on|onto|to (to) (a)
    third|spare|another|extra|cable needle, sl next # (st) on|onto|to (a) cn, sl|pass next # (st)
    on|onto|to (to) (a) third|spare|another|extra|cable needle, place|put|bring (next) # (st) on|onto (a) cn,
    place|put|bring (next) # (st) on|onto (a) third|cable needle`,
  ),
  says(
    {says: 'nothing'},
    `
    join, join (a) second|another|new (ball) (of) (yarn), join yarn, work wrap (tog) (with) (st) (they) (wrap),
    pick up wrap, pick up wrap & k|p|work it|them tog with (wrap) st, pick up wrap & k|p|work it|them tog with (wrap) st (they) (wrap),
    work ds as 1 (st), work double st as 1 (st), work (on) these st (only), leave remain (#) st unworked, leave|leaving remain st, leave remainder (unworked), join in round, join for working in round, join work in round, be careful not to twist,
    being careful not to twist, being careful not to twist st, ending with (a) (ws|rs) row, in
    front, as to bring it in front (again), keep pattern straight, wrap next|1 st, wrap st,
    twist yarn (tog|round|around) (at|on) (back|ws) (of) (work), cross yarn (at) (back) (of) (work)`,
  ),
];

/** All the phrases of the trade, by their first word. */
export const phraseTree: PhraseTree<Meaning> = makePhraseTree<Meaning>();
for (const {meaning, phrases} of [...stitchVocabulary, ...otherPhrases]) {
  for (const phrase of phrases) addPhrase(phraseTree, phrase, meaning);
}
