import {drawYarn, type Point, pathThrough} from './draw-yarn.ts';

/** One knit stitch at any angle: its foot, its head, and its width in pixels. */
export function drawStitch(foot: Point, head: Point, width: number, colour: string): string {
  const length = Math.hypot(head.x - foot.x, head.y - foot.y);
  const along = {x: (head.x - foot.x) / length, y: (head.y - foot.y) / length};
  const at = (share: number, aside: number): Point => ({
    x: foot.x + along.x * share * length - along.y * aside * width,
    y: foot.y + along.y * share * length + along.x * aside * width,
  });
  return [-1, 1]
    .map((side) =>
      drawYarn(
        pathThrough(
          at(-0.22, side * 0.1),
          at(0.25, side * 0.25),
          at(0.6, side * 0.37),
          at(1.06, side * 0.33),
        ),
        colour,
        0.43 * width,
      ),
    )
    .join('');
}

/** A column of knit stitches from one point to another. */
export function drawWale(from: Point, to: Point, stitches: number, width: number, colour: string): string {
  const at = (index: number): Point => ({
    x: from.x + ((to.x - from.x) * index) / stitches,
    y: from.y + ((to.y - from.y) * index) / stitches,
  });
  return Array.from({length: stitches}, (_, index) =>
    drawStitch(at(index), at(index + 1), width, colour),
  ).join('');
}

/** A column of purl stitches from one point to another: a bump across it for each. */
export function drawPurls(from: Point, to: Point, stitches: number, width: number, colour: string): string {
  const step = {x: (to.x - from.x) / stitches, y: (to.y - from.y) / stitches};
  const length = Math.hypot(step.x, step.y);
  const across = {x: (-step.y / length) * width, y: (step.x / length) * width};
  return Array.from({length: stitches}, (_, index) => {
    const at = (along: number, aside: number): Point => ({
      x: from.x + step.x * (index + along) + across.x * aside,
      y: from.y + step.y * (index + along) + across.y * aside,
    });
    const path = pathThrough(at(0.25, -0.48), at(0.8, -0.25), at(0.8, 0.25), at(0.25, 0.48));
    return drawYarn(path, colour, Math.min(0.4 * length, 0.36 * width));
  }).join('');
}
