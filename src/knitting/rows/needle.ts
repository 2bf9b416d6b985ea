import type {Law} from './law.ts';
import {isSame, type LinearForm, minus, none, plus} from './linear-form.ts';
import type {Landmark} from './row-syntax.ts';

/** A marker, a gap or a turning place on one of the needles, `at` stitches from that needle's own far end. */
export interface Mark {
  readonly kind: Landmark;
  readonly name: string | null;
  readonly at: LinearForm;
}

/**
 * Both needles at one moment. Marks on the right needle are counted from where the row began, marks on the left needle
 * from where it will end, so that neither changes while stitches are worked, and turning merely exchanges the needles.
 */
export interface Needles {
  readonly left: LinearForm;
  readonly right: LinearForm;
  readonly leftMarks: readonly Mark[];
  readonly rightMarks: readonly Mark[];
}

export function castOn(count: LinearForm): Needles {
  return {left: count, right: none, leftMarks: [], rightMarks: []};
}

export function totalOf({left, right}: Needles): LinearForm {
  return plus(left, right);
}

/** The work is turned where it is. */
export function turned({left, right, leftMarks, rightMarks}: Needles): Needles {
  return {left: right, right: left, leftMarks: rightMarks, rightMarks: leftMarks};
}

/** The end of a round: everything is before the knitter again in the same direction. */
export function rounded({left, right, leftMarks, rightMarks}: Needles): Needles {
  const total = plus(left, right);
  const marks = rightMarks.map((mark) => ({...mark, at: minus(total, mark.at)}));
  return {left: total, right: none, leftMarks: [...marks, ...leftMarks], rightMarks: []};
}

/** As many stitches as that before the next row; the markers stay where they are from the far end. */
export function withTotal(needles: Needles, total: LinearForm): Needles {
  const {left, leftMarks} = needles;
  return isSame(totalOf(needles), total) && isSame(left, total)
    ? needles
    : {left: total, right: none, leftMarks, rightMarks: []};
}

/** A mark laid at the working end of the right needle; of more than `most` the oldest is forgotten. */
export function withMark(needles: Needles, mark: Mark, most: number): Needles {
  const {rightMarks} = needles;
  const kept = rightMarks.length >= most ? rightMarks.slice(1) : rightMarks;
  return {...needles, rightMarks: [...kept, mark]};
}

/** `used` stitches leave the left needle and `made` come to the right one; markers that are passed go with them. */
export function worked(needles: Needles, used: LinearForm, made: LinearForm, law: Law): Needles {
  const left = minus(needles.left, used);
  const right = plus(needles.right, made);
  if (needles.leftMarks.length === 0 || isSame(used, none)) return {...needles, left, right};
  const stays = (mark: Mark) => law.signOf(minus(left, mark.at)) >= 0;
  const passed = needles.leftMarks.filter((mark) => isCarried(mark) && !stays(mark));
  const isOneToOne = isSame(used, made);
  const moved = passed.map((mark) => ({
    ...mark,
    at: isOneToOne ? plus(needles.right, minus(needles.left, mark.at)) : needles.right,
  }));
  return {
    left,
    right,
    leftMarks: needles.leftMarks.filter(stays),
    rightMarks: [...needles.rightMarks, ...moved],
  };
}

/** A marker is slipped on, and the beginning of a round stays where it is; a turn or a gap is done with when passed. */
function isCarried({kind}: Mark): boolean {
  return kind === 'marker' || kind === 'round start';
}

export function isSameNeedles(a: Needles, b: Needles): boolean {
  return (
    isSame(a.left, b.left) &&
    isSame(a.right, b.right) &&
    isSameMarks(a.leftMarks, b.leftMarks) &&
    isSameMarks(a.rightMarks, b.rightMarks)
  );
}

function isSameMarks(a: readonly Mark[], b: readonly Mark[]): boolean {
  return (
    a.length === b.length &&
    a.every(
      (mark, index) =>
        mark.kind === b[index]?.kind && mark.name === b[index].name && isSame(mark.at, b[index].at),
    )
  );
}
