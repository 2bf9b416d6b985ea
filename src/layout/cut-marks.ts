import type {Size} from './paper.ts';
import type {Rectangle} from './tab-place.ts';

const mark = {gap: 1, length: 2.5};

/**
 * SVG path data of the cut marks of pieces that stand edge to edge: outside the block of them, at the ends of every line
 * that is cut. An edge of the paper is not cut, and a mark that would lie off it is left out.
 */
export function cutMarks(paper: Size, places: readonly Rectangle[]): string {
  const verticals = distinct(places.flatMap(({x, width}) => [x, x + width]));
  const horizontals = distinct(places.flatMap(({y, height}) => [y, y + height]));
  const [left, right] = [Math.min(...verticals), Math.max(...verticals)];
  const [top, bottom] = [Math.min(...horizontals), Math.max(...horizontals)];
  const {gap, length} = mark;
  const reach = gap + length;
  const hasRoom = {
    above: top >= reach,
    below: bottom + reach <= paper.height,
    before: left >= reach,
    behind: right + reach <= paper.width,
  };
  return [
    ...verticals
      .filter((x) => x > 0 && x < paper.width)
      .map(
        (x) =>
          (hasRoom.above ? `M${x} ${top - gap}v${-length}` : '') +
          (hasRoom.below ? `M${x} ${bottom + gap}v${length}` : ''),
      ),
    ...horizontals
      .filter((y) => y > 0 && y < paper.height)
      .map(
        (y) =>
          (hasRoom.before ? `M${left - gap} ${y}h${-length}` : '') +
          (hasRoom.behind ? `M${right + gap} ${y}h${length}` : ''),
      ),
  ].join('');
}

/** Neighbours share a line; sums of millimetres may differ in their last binary digits. */
function distinct(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers.map((number) => Math.round(number * 1000) / 1000))];
}
