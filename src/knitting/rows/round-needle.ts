import type {Law} from './law.ts';
import {isSame, type LinearForm, minus, none, plus} from './linear-form.ts';
import {type Mark, type Needles, rounded, turned} from './needle.ts';

/**
 * In a round that was turned one can work on past its beginning: `count` stitches from the far end of the right needle
 * come round behind those of the left one, and the beginning of the round is marked where they join.
 */
export function broughtRound(needles: Needles, count: LinearForm, law: Law): Needles {
  const {left, right, leftMarks, rightMarks} = needles;
  const isBrought = ({at}: Mark) => law.signOf(minus(count, at)) > 0;
  const shifted = leftMarks.map((mark) => ({...mark, at: plus(mark.at, count)}));
  const brought = rightMarks.filter(isBrought).map((mark) => ({...mark, at: minus(count, mark.at)}));
  const kept = rightMarks
    .filter((mark) => !isBrought(mark))
    .map((mark) => ({...mark, at: minus(mark.at, count)}));
  const isMarked = [...leftMarks, ...rightMarks].some(isRoundStart);
  const start: readonly Mark[] = isMarked ? [] : [{kind: 'round start', name: null, at: count}];
  return {
    left: plus(left, count),
    right: minus(right, count),
    leftMarks: [...shifted, ...brought, ...start],
    rightMarks: kept,
  };
}

/**
 * Stitches on the left needle behind the beginning of the round, when that lies ahead on it or just here; none where it
 * is at the needle's far end.
 */
export function behindRoundStart({left, leftMarks}: Needles, law: Law): LinearForm {
  const ahead = leftMarks.filter((mark) => isRoundStart(mark) && law.signOf(minus(left, mark.at)) >= 0);
  return ahead.reduce((far, {at}) => (law.signOf(minus(at, far)) > 0 ? at : far), none);
}

/** Stitches on the right needle that were worked after the beginning of the round was passed; none where it was not. */
export function pastRoundStart({right, rightMarks}: Needles): LinearForm {
  const start = rightMarks.find(isRoundStart);
  return start ? minus(right, start.at) : none;
}

/** The needles at the beginning of the next round, which goes forward again where this one went backward. */
export function nextRound(needles: Needles, isBackward: boolean, law: Law): Needles {
  const isPassed = isSame(needles.left, none);
  const whole = isPassed ? rounded(needles) : broughtRound(needles, needles.right, law);
  const {leftMarks} = whole;
  const clean = {...whole, leftMarks: leftMarks.filter((mark) => !isRoundStart(mark))};
  return isBackward ? rounded(turned(clean)) : clean;
}

function isRoundStart({kind}: Mark): boolean {
  return kind === 'round start';
}
