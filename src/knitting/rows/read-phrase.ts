import type {Cursor} from './cursor.ts';
import type {Token} from './lex-row.ts';
import {passOver} from './pass-over.ts';
import {longestPhrase, type PhraseMatch} from './phrase-tree.ts';
import {readCableWords} from './read-cable-words.ts';
import {readBindOff, readCastOn} from './read-edges.ts';
import {readExtent, readMarkerName} from './read-extent.ts';
import {readManner} from './read-manner.ts';
import {readRun} from './read-run.ts';
import {readTwistBehind, readTwistFromSecond} from './read-twist.ts';
import type {Extent, Sized, Step} from './row-syntax.ts';
import type {StepList} from './step-list.ts';
import type {Stitch} from './stitch.ts';
import {makeOne, slipKnitwise, yarnOver} from './stitches.ts';
import type {Meaning} from './vocabulary.ts';

/** Reads one phrase of the vocabulary and what belongs to it. False, and nothing read, when none begins here. */
export function readPhrase(cursor: Cursor, list: StepList): boolean {
  const from = cursor.at;
  const twist = readTwistFromSecond(cursor);
  if (twist) {
    pushStitch(cursor, list, twist, from);
    return true;
  }
  const match = matchHere(cursor, cursor.to);
  if (!match) return false;
  cursor.at = match.next;
  pushMeaning(cursor, list, match, from);
  return true;
}

/** The pattern's own abbreviations come first. The number of `yo 2 times` belongs to the times. */
function matchHere(cursor: Cursor, to: number): PhraseMatch<Meaning> | null {
  const {ownPhrases, phrases, tokens} = cursor.reading;
  const match =
    longestPhrase(ownPhrases, tokens, cursor.at, to) ?? longestPhrase(phrases, tokens, cursor.at, to);
  if (!match) return null;
  const last = tokens[match.next - 1];
  const isTimes = tokens[match.next]?.text === 'time' && last?.kind === 'number';
  if (isTimes || isYarn(cursor, last)) return matchHere(cursor, match.next - 1);
  // Numbers that make no stitch, `k1 into next st`, may be those of a shorter phrase.
  const isNone = match.meaning.says === 'made stitch' && match.meaning.make(match.numbers) === null;
  return (isNone ? matchHere(cursor, match.next - 1) : null) ?? match;
}

/** The B of `k1 B` is a yarn; that of `k1b` is below. */
function isYarn({reading, at}: Cursor, last: Token | undefined): boolean {
  const first = reading.tokens[at]?.text;
  if (last?.text !== 'b' || !last.isApart || (first !== 'k' && first !== 'p')) return false;
  return reading.text[last.start] === 'B';
}

function pushMeaning(cursor: Cursor, list: StepList, match: PhraseMatch<Meaning>, from: number): void {
  const {meaning} = match;
  const span = cursor.spanFrom(from);
  const number = () => cursor.sizedAt(match.firstNumber);
  switch (meaning.says) {
    case 'stitch': {
      const isOver = meaning.stitch === makeOne && cursor.reading.makeOneIsOver;
      const count = meaning.isCounted && match.firstNumber >= 0 ? number() : null;
      if (meaning.stitch.mustBeDefined) reportUndefined(cursor, meaning.stitch, from);
      pushStitch(cursor, list, isOver ? yarnOver : meaning.stitch, from, count);
      return;
    }
    case 'made stitch': {
      const stitch = meaning.make(match.numbers);
      if (stitch)
        pushStitch(cursor, list, (stitch.id === 'k2tog' && readTwistBehind(cursor)) || stitch, from);
      else reportNoSuchStitch(cursor, from);
      return;
    }
    case 'remainder':
      list.push(workStep(meaning.stitch, {kind: 'to end'}, span));
      return;
    case 'overs':
      pushStitch(cursor, list, yarnOver, from, timesOf(meaning.times, number, span));
      return;
    case 'yarn forward':
      list.push({...workStep(yarnOver, once(span), span), isDoubtful: true});
      return;
    case 'yarn':
      list.push({kind: 'yarn', to: meaning.to, span});
      return;
    case 'slip together':
      list.push(workStep(slipKnitwise, {kind: 'times', count: number()}, span));
      return;
    case 'pass over': {
      const isBehindAnd = list.andAt === list.steps.length;
      passOver(cursor, list, meaning.over === 'number' ? (match.numbers[0] ?? 1) : meaning.over, from);
      if (isBehindAnd) list.andAt = list.steps.length;
      return;
    }
    case 'bind off':
      if (isBoundOver(cursor, span)) passOver(cursor, list, 'said', from);
      else readBindOff(cursor, list, from);
      return;
    case 'cast on':
      readCastOn(cursor, list, 'cast on', from);
      return;
    case 'pick up':
      readCastOn(cursor, list, 'pick up', from);
      return;
    case 'marker':
      list.push({
        kind: 'marker',
        action: meaning.action,
        name: readMarkerName(cursor),
        span: cursor.spanFrom(from),
      });
      return;
    case 'turn':
      list.push({kind: 'turn', how: meaning.how, span});
      return;
    case 'at edges':
      list.edges.push({change: meaning.change, where: meaning.where, span});
      return;
    case 'evenly':
      pushEvenly(list, {kind: 'evenly', change: meaning.change, count: number(), span});
      return;
    case 'cable needle':
      readCableWords(cursor, list, match.numbers[0] ?? 1, from, (inner) => readPhrase(cursor, inner));
      return;
    case 'into':
      pushInto(cursor, list, match.numbers[0] ?? 1, from);
      return;
    case 'nothing':
      return;
  }
}

/** `slip one, narrow and bind`: the old American word for passing over, when no count and no `off` follows. */
function isBoundOver(cursor: Cursor, span: Step['span']): boolean {
  return /^bind$/i.test(cursor.written(span)) && !['number', 'word'].includes(cursor.peek()?.kind ?? '');
}

function timesOf(times: number | 'number', number: () => Sized, span: Step['span']): Sized | null {
  if (times === 'number') return number();
  return times === 1 ? null : {values: [times], span};
}

/** Adds the stitch with its count or extent, and what is said of how it is worked. */
function pushStitch(
  cursor: Cursor,
  list: StepList,
  stitch: Stitch,
  from: number,
  count: Sized | null = null,
): void {
  if (cursor.reading.unsure.has(stitch.id)) cursor.isWholeRead = false;
  let manner = readManner(cursor, stitch);
  const early = count ? null : readExtent(cursor);
  const isPair = list.andAt === list.steps.length && list.andAt > 0 && (early === null || isTimes(early));
  const extent = runExtent(cursor, manner.stitch, from, count, isPair ? null : early);
  const later = readManner(cursor, manner.stitch);
  manner = {
    stitch: later.stitch,
    yarn: later.yarn ?? manner.yarn,
    colour: later.colour ?? manner.colour ?? cursor.colour,
  };
  const step = workStep(manner.stitch, extent, cursor.spanFrom(from));
  const {yarn, colour} = manner;
  list.push(colour === null ? {...step, yarn} : {...step, yarn, colour});
  const again = isPair && early ? early : extent.kind === 'times' ? readExtent(cursor) : null;
  if (!again) return;
  const last = list.steps.length - 1;
  if (isPair && isTimes(again))
    list.wrapEither(list.thenStart > list.clauseStart ? list.thenStart : last - 1, again);
  else list.wrap(last, 'bracket', again);
}

function isTimes({kind}: Extent): boolean {
  return kind === 'times' || kind === 'more';
}

/** In `k1 and m1 twice` the times are of both, and the run itself is one. */
function runExtent(
  cursor: Cursor,
  stitch: Stitch,
  from: number,
  count: Sized | null,
  early: Extent | null,
): Extent {
  return count ? {kind: 'times', count} : (early ?? readRun(cursor, stitch, from));
}

/** `Knit, inc 6 sts evenly`: the increases are part of the knitting just named. */
function pushEvenly(list: StepList, step: Extract<Step, {kind: 'evenly'}>): void {
  const before = list.steps.at(-1);
  if (before?.kind === 'work' && (before.stitch.kind === 'plain' || before.stitch.kind === 'as set')) {
    list.steps.pop();
  }
  list.push(step);
}

/** `k1, p1 into next st`: the single stitches just before go into one. */
function pushInto(cursor: Cursor, list: StepList, uses: number, from: number): void {
  const {steps} = list;
  let start = steps.length;
  while (start > list.clauseStart && isSingle(steps[start - 1])) start -= 1;
  const inner = steps.splice(start);
  const first = inner[0];
  const span = cursor.spanFrom(from);
  if (first) {
    list.push({kind: 'into', steps: inner, uses, span: {start: first.span.start, end: span.end}});
    return;
  }
  cursor.complain(
    `\`${cursor.written(span)}\` does not say what is worked into it`,
    'Write the stitches before it, such as `(k1, yo, k1) in next st`.',
    span,
  );
}

function isSingle(step: Step | undefined): boolean {
  if (step?.kind === 'repeat')
    return step.style === 'bracket' && step.extent.kind === 'times' && step.steps.every(isSingle);
  if (step?.kind !== 'work' || step.extent.kind !== 'times' || step.extent.count.values[0] !== 1)
    return false;
  return step.stitch.kind === 'plain' || step.stitch.id === 'yo';
}

function workStep(stitch: Stitch, extent: Extent, span: Step['span']) {
  return {kind: 'work', stitch, extent, yarn: null, isDoubtful: false, span} as const;
}

function once(span: Step['span']): Extent {
  return {kind: 'times', count: {values: [1], span}};
}

function reportUndefined(cursor: Cursor, stitch: Stitch, from: number): void {
  const span = cursor.spanFrom(from);
  const written = cursor.written(span);
  const isWhole = cursor.isWholeRead;
  cursor.complain(
    `\`${written}\` is worked differently in every pattern and is not defined here`,
    `Add a line such as \`${stitch.names.american.abbreviation}: uses ${stitch.uses}, makes ${stitch.makes}, "${stitch.names.american.words}: …"\`.`,
    span,
  );
  cursor.isWholeRead = isWhole;
}

function reportNoSuchStitch(cursor: Cursor, from: number): void {
  const span = cursor.spanFrom(from);
  cursor.complain(
    `\`${cursor.written(span)}\` is not a stitch: its numbers cannot be worked`,
    'Check the numbers, such as `k2tog`, `2/2 RC`, `C6B`.',
    span,
  );
}
