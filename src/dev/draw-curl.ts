import type {Fabric} from './draw-fabric.ts';

/**
 * Rolls both side edges of a relaxed fabric away from the eye, as cloth does that was never pinned out: the outermost
 * `reach` millimetres turn through a quarter circle and are seen foreshortened. Common practice of drawing, no source.
 */
export function curlEdges(fabric: Fabric, reach: number): void {
  const radius = (2 * reach) / Math.PI;
  for (const row of fabric.rows) {
    const [first, last] = [row[0], row.at(-1)];
    if (first === undefined || last === undefined) continue;
    const [left, right] = [first.x - first.width / 2 + reach, last.x + last.width / 2 - reach];
    for (const loop of row) {
      const outward = Math.max(left - loop.x, loop.x - right, 0);
      if (outward === 0) continue;
      const seen = radius * Math.sin(outward / radius);
      loop.x += (loop.x < left ? 1 : -1) * (outward - seen);
      loop.width *= Math.max(0.3, Math.cos(outward / radius));
    }
  }
}
