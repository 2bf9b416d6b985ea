import {type Fabric, type Loop, work} from './draw-fabric.ts';
import type {View} from './draw-loops.ts';
import {drawWale} from './draw-wale.ts';
import {type Point, round, shade} from './draw-yarn.ts';

export interface NeckPlan {
  /** Pairs of rows, a right-side and a wrong-side row each. */
  readonly pairs: number;
  /** Stitches of one half before it is shaped. */
  readonly half: number;
  /** Stitches bound off between the halves. */
  readonly centre: number;
  /** What happens at the outer edge in a pair: `bo4`, `dec` or nothing. */
  readonly arm: (pair: number) => string;
  /** Whether the neck edge loses a stitch in a pair. */
  readonly narrows: (pair: number) => boolean;
}

/** The edge loops of every row, from the point of the neck or the underarm upwards. */
export interface NeckEdges {
  readonly leftNeck: Loop[];
  readonly rightNeck: Loop[];
  readonly leftArm: Loop[];
  readonly rightArm: Loop[];
}

/** Works the half at the right, then, with the first waiting, the half at the left. */
export function splitNeck(fabric: Fabric, plan: NeckPlan): NeckEdges {
  const edges: NeckEdges = {leftNeck: [], rightNeck: [], leftArm: [], rightArm: []};
  let stitches = plan.half;
  for (let pair = 0; pair < plan.pairs; pair++) {
    const arm = plan.arm(pair) === 'dec' ? 'k ssk' : plan.arm(pair);
    const neck = plan.narrows(pair) ? 'k2tog k' : '';
    work(fabric, 'RS', `${arm} k${stitches - taken(arm) - taken(neck)} ${neck}`);
    stitches = fabric.rows.at(-1)?.length ?? 0;
    work(fabric, 'WS', `p${stitches}`);
    keep(edges.rightNeck, edges.rightArm, fabric);
  }
  const finished = stitches;
  stitches = plan.half;
  for (let pair = 0; pair < plan.pairs; pair++) {
    const neck = plan.narrows(pair) ? 'k ssk' : '';
    const arm = plan.arm(pair) === 'dec' ? 'k2tog k' : '';
    const bound = plan.arm(pair).startsWith('bo') ? plan.arm(pair) : '';
    const centre = pair === 0 && plan.centre > 0 ? `bo${plan.centre}` : '';
    fabric.waiting = finished;
    work(fabric, 'RS', `${centre} ${neck} k${stitches - taken(neck) - taken(arm)} ${arm}`);
    stitches = (fabric.rows.at(-1)?.length ?? 0) - taken(bound);
    work(fabric, 'WS', `${bound} p${stitches}`);
    keep(edges.leftArm, edges.leftNeck, fabric);
  }
  return edges;
}

function taken(shaping: string): number {
  if (shaping === '') return 0;
  return shaping.startsWith('bo') ? Number(shaping.slice(2)) : 3;
}

function keep(atLeft: Loop[], atRight: Loop[], fabric: Fabric): void {
  for (const row of fabric.rows.slice(-2)) {
    const [first, last] = [row[0], row.at(-1)];
    if (first !== undefined) atLeft.push(first);
    if (last !== undefined) atRight.push(last);
  }
}

/** The place of a loop in the picture, moved aside by a share of its width. */
export function pointOf(view: View, loop: Loop, aside: number): Point {
  return {x: view.x + (loop.x + aside * loop.width) * view.scale, y: view.y - loop.y * view.scale};
}

/** What is seen of the back through the neck, down to `bottom`: its band, and the cloth below it in shadow. */
export function drawBackNeck(
  left: Point,
  right: Point,
  depth: number,
  colour: string,
  bottom: number,
): string {
  const dip = depth * 1.1;
  const reach = (right.x - left.x) * 0.25;
  const top = -depth * 0.3;
  const inside =
    `<path d="M${round(left.x)} ${round(left.y + top)}C${round(left.x + reach)} ${round(left.y + dip + top)} ` +
    `${round(right.x - reach)} ${round(right.y + dip + top)} ${round(right.x)} ${round(right.y + top)}` +
    `V${round(bottom)}H${round(left.x)}Z" fill="${shade(colour, -0.5)}"/>`;
  const count = Math.round((right.x - left.x) / 12);
  const wales = Array.from({length: count}, (_, index) => {
    if (index % 4 > 1) return '';
    const share = (index + 0.5) / count;
    const x = left.x + (right.x - left.x) * share;
    const y = left.y + dip * 3 * share * (1 - share) + top;
    return drawWale({x, y: y + depth * 0.8}, {x, y}, 4, 13, shade(colour, -0.25));
  });
  return inside + wales.join('');
}
