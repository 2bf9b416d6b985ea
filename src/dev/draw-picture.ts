import {curlEdges} from './draw-curl.ts';
import type {Fabric, Loop} from './draw-fabric.ts';
import type {View} from './draw-loops.ts';
import {drawGround, drawPiece, extentOf} from './draw-piece.ts';
import {relax} from './draw-relax.ts';
import {canvas, holeColour, sceneToSvg} from './draw-scene.ts';

export interface Picture {
  /** File name in content/photos. */
  readonly file: string;
  readonly svg: () => string;
}

export interface SwatchLook {
  readonly raisedPurls?: boolean;
  readonly boundOff?: boolean;
  readonly gape?: number;
  readonly upright?: number;
  readonly level?: number;
  /** How many millimetres of each side edge curl; none in a piece that was pinned out. */
  readonly curl?: number;
  /** More to draw above the fabric, such as buttons. */
  readonly above?: (view: View) => string;
}

/** A picture of one flat piece with a ruler beside it. */
export function pictureOfSwatch(file: string, knit: () => Fabric, look: SwatchLook = {}): Picture {
  return {
    file,
    svg: () => {
      const fabric = knit();
      relax(fabric, {upright: look.upright ?? 0.7, level: look.level ?? 0.6});
      curlEdges(fabric, look.curl ?? 0);
      const view = viewOf(fabric.rows);
      return sceneToSvg({
        ground: drawGround(fabric, view),
        knitting: drawFabric(fabric, view, look) + (look.above?.(view) ?? ''),
        scale: view.scale,
      });
    },
  };
}

export function drawFabric(fabric: Fabric, view: View, look: SwatchLook = {}): string {
  const style = {
    raisedPurls: look.raisedPurls ?? false,
    boundOff: look.boundOff ?? true,
    hole: holeColour,
    gape: look.gape ?? 1,
  };
  return drawPiece(fabric, view, style);
}

/** The largest scale at which the piece fits between the margins, the piece in the middle. */
export function viewOf(rows: readonly (readonly Loop[])[]): View {
  const extent = extentOf(rows);
  const [across, upright] = [extent.right - extent.left, extent.top - extent.bottom];
  const scale = Math.min((canvas.width - 120) / across, (canvas.height - 150) / upright);
  return {
    scale,
    x: canvas.width / 2 - ((extent.left + extent.right) / 2) * scale,
    y: (canvas.height - 50) / 2 + ((extent.bottom + extent.top) / 2) * scale,
  };
}
