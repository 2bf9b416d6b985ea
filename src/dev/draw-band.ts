import {drawPurls, drawWale} from './draw-wale.ts';
import {type Point, round, shade} from './draw-yarn.ts';

export interface Band {
  /** The edge it is picked up from, in pixels; it is worked towards the left of the walk along the edge. */
  readonly edge: readonly Point[];
  readonly depth: number;
  readonly rounds: number;
  /** Width of one stitch of the band in pixels. */
  readonly stitch: number;
  readonly colour: string;
  /** The band ends where it meets this upright line. */
  readonly mitre?: number;
}

export function drawBandGround(band: Band): string {
  const inner = band.edge.map((_, index) => endOfWale(band, index)).reverse();
  const points = [...band.edge, ...inner].map((point) => `${round(point.x)},${round(point.y)}`).join(' ');
  return `<polygon points="${points}" fill="${shade(band.colour, -0.45)}"/>`;
}

/** A knit 2, purl 2 rib that stands at right angles to the edge. */
export function drawBand(band: Band): string {
  const wales: string[] = [];
  let walked = 0;
  let next = band.stitch / 2;
  let count = 0;
  for (const [index, point] of band.edge.entries()) {
    const before = band.edge[index - 1];
    if (before === undefined) continue;
    const length = Math.hypot(point.x - before.x, point.y - before.y);
    for (; next <= walked + length; next += band.stitch, count++) {
      const share = (next - walked) / length;
      const start = {x: before.x + (point.x - before.x) * share, y: before.y + (point.y - before.y) * share};
      const end = towards(start, normalAt(band, index), band);
      const long = Math.hypot(end.x - start.x, end.y - start.y);
      const stitches = Math.round((band.rounds * long) / band.depth);
      if (stitches === 0) continue;
      const purl = count % 4 > 1;
      wales.push(
        (purl ? drawPurls : drawWale)(
          start,
          end,
          stitches,
          band.stitch,
          purl ? shade(band.colour, -0.15) : band.colour,
        ),
      );
    }
    walked += length;
  }
  return wales.join('');
}

function endOfWale(band: Band, index: number): Point {
  const point = band.edge[index] ?? {x: 0, y: 0};
  return towards(point, normalAt(band, index), band);
}

function towards(start: Point, normal: Point, band: Band): Point {
  const toMitre = band.mitre === undefined ? Number.POSITIVE_INFINITY : (band.mitre - start.x) / normal.x;
  const reach = toMitre > 0 ? Math.min(band.depth, toMitre) : band.mitre === undefined ? band.depth : 0;
  return {x: start.x + normal.x * reach, y: start.y + normal.y * reach};
}

/** The direction across the edge, taken over a few points so that single steps do not show. */
function normalAt(band: Band, index: number): Point {
  const [from, to] = [
    band.edge[Math.max(0, index - 4)],
    band.edge[Math.min(band.edge.length - 1, index + 4)],
  ];
  if (from === undefined || to === undefined) return {x: 0, y: -1};
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return {x: (to.y - from.y) / length, y: -(to.x - from.x) / length};
}
