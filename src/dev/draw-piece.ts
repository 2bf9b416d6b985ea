import type {Fabric, Loop} from './draw-fabric.ts';
import {drawLoop, type LoopStyle, seenX, type View} from './draw-loops.ts';
import {drawYarn, pathThrough, round, shade} from './draw-yarn.ts';

export interface PieceStyle extends LoopStyle {
  /** The upper edge is bound off with a chain; otherwise its loops are open. */
  readonly boundOff: boolean;
}

/** The box a fabric fills, in millimetres. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function extentOf(rows: readonly (readonly Loop[])[]): Extent {
  const loops = rows.flat();
  return {
    left: Math.min(...loops.map((loop) => loop.x - loop.width / 2)),
    right: Math.max(...loops.map((loop) => loop.x + loop.width / 2)),
    bottom: Math.min(...loops.map((loop) => loop.y - loop.height)),
    top: Math.max(...loops.map((loop) => loop.y + loop.height)),
  };
}

/** The dark cloth behind the loops, so that no light shows between them. */
export function drawGround(fabric: Fabric, view: View): string {
  return fabric.rows
    .flat()
    .map((loop) => {
      if (loop.look === 'over') return '';
      const width = loop.width * 1.16 * view.scale;
      const height = loop.height * (loop.children.length === 0 ? 1.1 : 1.35) * view.scale;
      const bent = (seenX(loop) - loop.x) * view.scale;
      const x = view.x + loop.x * view.scale - width / 2 + Math.min(bent, 0);
      const y =
        view.y -
        loop.y * view.scale -
        (loop.row === 0 ? 0.8 : loop.children.length === 0 ? 0.35 : 0.5) * height;
      return `<rect x="${round(x)}" y="${round(y)}" width="${round(width + Math.abs(bent))}" height="${round(height)}" rx="3" fill="${shade(loop.colour, -0.55)}"/>`;
    })
    .join('');
}

export function drawPiece(fabric: Fabric, view: View, style: PieceStyle): string {
  const marks = fabric.rows.flat().flatMap((loop) => drawLoop(loop, view, style));
  const drawn = marks.toSorted((a, b) => a.depth - b.depth).map((mark) => mark.svg);
  return drawn.join('') + (style.boundOff ? fabric.live.map((loop) => drawLink(loop, view)).join('') : '');
}

/** One link of a chain bind-off: a stitch lying on its side along the edge. */
function drawLink(loop: Loop, view: View): string {
  const centre = {
    x: view.x + seenX(loop) * view.scale,
    y: view.y - (loop.y + 0.62 * loop.height) * view.scale,
  };
  const [width, height] = [loop.width * view.scale, 0.34 * loop.width * view.scale];
  return [-1, 1]
    .map((side) => {
      const path = pathThrough(
        {x: centre.x + 0.55 * width, y: centre.y + side * 0.1 * height},
        {x: centre.x + 0.2 * width, y: centre.y + side * 0.3 * height},
        {x: centre.x - 0.2 * width, y: centre.y + side * 0.75 * height},
        {x: centre.x - 0.5 * width, y: centre.y + side * 0.7 * height},
      );
      return drawYarn(path, loop.colour, 0.32 * loop.width * view.scale);
    })
    .join('');
}
