import type {Loop} from './draw-fabric.ts';
import {drawYarn, type Point, pathThrough, round, shade, unevenness} from './draw-yarn.ts';

/** From millimetres on the knitting to pixels of the picture. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** One thing to draw; what has the higher depth lies nearer to the eye. */
export interface Mark {
  readonly depth: number;
  readonly svg: string;
}

export interface LoopStyle {
  /** Purl ridges stand out, as in garter stitch; otherwise the knit wales do, as in rib. */
  readonly raisedPurls: boolean;
  readonly hole: string;
  /** How wide a yarn over gapes; 1 in plain cloth. */
  readonly gape: number;
}

/** Where a loop is seen: crossings bend the rows before and after them. */
export function seenX(loop: Loop): number {
  const before = bend(loop.children[0]?.travel ?? 0);
  const after = bend(loop.parents[0]?.travel ?? 0);
  return loop.x + loop.width * (before - 0.5 * loop.travel - after);
}

export function drawLoop(loop: Loop, view: View, style: LoopStyle): readonly Mark[] {
  if (loop.look === 'hidden' || loop.children.some((child) => child.tall)) return [];
  if (loop.look === 'over') return [drawHole(loop, view, style)];
  return loop.look === 'purl' || loop.look === 'cast-on'
    ? [drawBump(loop, view, style)]
    : [drawLegs(loop, view), ...(loop.barred ? [drawBar(loop, view)] : [])];
}

/** A long crossing needs more than its own row to get across. */
function bend(travel: number): number {
  return Math.abs(travel) > 1 ? 0.22 * travel : 0;
}

function place(view: View, x: number, y: number): Point {
  return {x: view.x + x * view.scale, y: view.y - y * view.scale};
}

function drawLegs(loop: Loop, view: View): Mark {
  const {width, height} = loop;
  const x = seenX(loop);
  const below = loop.parents.length === 0 ? x : mean(loop.parents.map(seenX));
  const child = loop.children[0];
  const gathered = child !== undefined && child.parents.length > 1;
  const above = child === undefined ? x : seenX(child);
  const forked = (loop.parents[0]?.children.length ?? 0) > 1;
  const foot = {x: x + (forked ? 0.85 : 0.5) * (below - x), y: loop.y - height * (loop.tall ? 1.6 : 0.72)};
  const head = {x: x + (gathered ? 0.75 : 0.5) * (above - x), y: loop.y + height * 0.56};
  const spread = loop.twisted ? -0.1 : 0.1;
  const crossing = crossingNear(loop);
  const colour = shade(loop.colour, crossing === 'back' ? -0.32 : lightOf(loop));
  const thickness = crossing === 'front' ? 0.52 : 0.43;
  const legs = [-1, 1].map((side) => {
    const loose = 0.03 * width * unevenness(loop.id * 2 + side);
    const start = place(view, foot.x + side * spread * width, foot.y);
    const first = place(view, foot.x + side * 0.25 * width + loose, foot.y + 0.4 * (head.y - foot.y));
    const second = place(view, head.x + side * 0.37 * width, foot.y + 0.65 * (head.y - foot.y));
    const end = place(view, head.x + side * (gathered ? 0.24 : 0.33) * width, head.y);
    return drawYarn(pathThrough(start, first, second, end), colour, thickness * width * view.scale);
  });
  return {depth: depthOfKnit(loop), svg: legs.join('')};
}

/** What lies on top in a decrease catches the light, what lies beneath is in its shadow. */
function lightOf(loop: Loop): number {
  const decrease = loop.children.find((child) => child.top !== null);
  if (decrease === undefined) return 0;
  return decrease.top === loop ? 0.16 : -0.16;
}

function crossingNear(loop: Loop): 'front' | 'back' | null {
  const near = [loop, ...loop.children, ...loop.parents].find((other) => other.travel !== 0);
  return near === undefined ? null : near.front ? 'front' : 'back';
}

/** In a crossing the strands in front cover the rows beside it; in a decrease one loop covers the others. */
function depthOfKnit(loop: Loop): number {
  const crossing = [loop, ...loop.children, ...loop.parents].find((near) => near.front && near.travel !== 0);
  if (crossing !== undefined) return crossing.row + 1.4 + (loop.row - crossing.row) * 0.1;
  const covering = loop.children.some((child) => child.top === loop);
  const crowded = loop.children.some((child) => child.parents.length > 1);
  return loop.row + (covering ? 0.3 : crowded ? 0.1 : 0);
}

function drawBump(loop: Loop, view: View, style: LoopStyle): Mark {
  const {width, height, y} = loop;
  const x = seenX(loop);
  const lift = loop.look === 'cast-on' ? 0.2 : 0;
  const half = 0.5 * width;
  const loose = 0.05 * height * unevenness(loop.id);
  const path = pathThrough(
    place(view, x - half, y - (0.3 - lift) * height),
    place(view, x - half * 0.5, y + 0.36 * height + loose),
    place(view, x + half * 0.5, y + 0.36 * height + loose),
    place(view, x + half, y - (0.3 - lift) * height),
  );
  const colour = style.raisedPurls || loop.look === 'cast-on' ? loop.colour : shade(loop.colour, -0.08);
  const depth = loop.row + (style.raisedPurls || loop.look === 'cast-on' ? 1.2 : -1.2);
  return {depth, svg: drawYarn(path, colour, Math.min(0.52 * height, 0.42 * width) * view.scale)};
}

function drawBar(loop: Loop, view: View): Mark {
  const x = seenX(loop);
  const foot = loop.y - 0.45 * loop.height;
  const path = pathThrough(
    place(view, x - 0.42 * loop.width, foot),
    place(view, x - 0.2 * loop.width, foot + 0.14 * loop.height),
    place(view, x + 0.2 * loop.width, foot + 0.14 * loop.height),
    place(view, x + 0.42 * loop.width, foot),
  );
  return {depth: loop.row + 0.6, svg: drawYarn(path, loop.colour, 0.34 * loop.width * view.scale, 0.35)};
}

function drawHole(loop: Loop, view: View, style: LoopStyle): Mark {
  const {x, y} = place(view, loop.x, loop.y - 0.2 * loop.height);
  const rx = 0.47 * style.gape * loop.width * view.scale;
  const ry = 0.78 * style.gape * loop.height * view.scale;
  const ring = `M${round(x - rx)} ${round(y + ry * 0.4)}A${round(rx)} ${round(ry)} 0 1 1 ${round(x + rx)} ${round(y + ry * 0.4)}`;
  const svg =
    `<ellipse cx="${round(x)}" cy="${round(y)}" rx="${round(rx)}" ry="${round(ry)}" fill="${style.hole}" stroke="none"/>` +
    drawYarn(ring, loop.colour, 0.2 * loop.width * view.scale);
  return {depth: loop.row + (style.raisedPurls ? 2.4 : 0.35), svg};
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
