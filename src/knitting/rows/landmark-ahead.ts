import type {Law} from './law.ts';
import {isSame, type LinearForm, minus} from './linear-form.ts';
import type {Needles} from './needle.ts';
import type {Extent, Landmark} from './row-syntax.ts';

/** Words of the text for one place and another: a turn leaves a gap. */
const alike: Readonly<Record<Landmark, readonly Landmark[]>> = {
  marker: ['marker'],
  gap: ['gap', 'turn'],
  turn: ['turn'],
  'double stitch': ['double stitch'],
  'round start': ['round start'],
};

/**
 * How many stitches are on the left needle at the nearest landmark ahead; null when there is none. A marker that was
 * just reached, at `reached` stitches, is passed by: the next `to marker` means the one behind it.
 */
export function landmarkAhead(
  {landmark, name}: Extract<Extent, {kind: 'to landmark'}>,
  {left, leftMarks}: Needles,
  law: Law,
  reached: LinearForm | null,
): LinearForm | null {
  const isAhead = (at: LinearForm) =>
    law.signOf(minus(left, at)) >= 0 && !(reached && isSame(reached, at) && isSame(left, at));
  const places = leftMarks.filter(
    (mark) =>
      alike[landmark].includes(mark.kind) && (name === null || mark.name === name) && isAhead(mark.at),
  );
  const first = places[0];
  if (!first) return null;
  return places.reduce((a, b) => (law.signOf(minus(b.at, a.at)) > 0 ? b : a), first).at;
}
