import sharp from 'sharp';
import {round} from './draw-yarn.ts';

export const canvas = {width: 1400, height: 1100} as const;
export const tableColour = '#e9e4da';
/** What is seen through a hole: the table in the shadow of the knitting. */
export const holeColour = '#cbc4b5';

const heaviestPhoto = 200_000;

export interface Scene {
  /** The shapes that throw a shadow on the table. */
  readonly ground: string;
  /** What lies above them. */
  readonly knitting: string;
  /** Pixels to a millimetre, for the ruler of 10 cm beside the piece; null for none. A close view has no room for it. */
  readonly scale: number | null;
}

/** The whole picture as an SVG document: no text and no fonts, so that it is the same on every machine. */
export function sceneToSvg(scene: Scene): string {
  const {width, height} = canvas;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" fill="none" stroke-linecap="round" stroke-linejoin="round">` +
    '<defs><filter id="shadow" x="-10%" y="-10%" width="120%" height="120%"><feDropShadow dx="5" dy="8" stdDeviation="9" flood-color="#3a3226" flood-opacity="0.45"/></filter></defs>' +
    `<rect width="${width}" height="${height}" fill="${tableColour}"/>` +
    `<g filter="url(#shadow)">${scene.ground}</g>${scene.knitting}` +
    (scene.scale === null || 100 * scene.scale > canvas.width - 200 ? '' : drawRuler(scene.scale)) +
    '</svg>'
  );
}

/** A JPEG light enough for the binder: the quality gives way until the weight is right. */
export async function rasterise(svg: string): Promise<Buffer> {
  const {data, info} = await sharp(Buffer.from(svg)).flatten().raw().toBuffer({resolveWithObject: true});
  const raw = {width: info.width, height: info.height, channels: info.channels};
  for (let quality = 82; ; quality -= 6) {
    const jpeg = await sharp(data, {raw})
      .jpeg({quality, mozjpeg: true, chromaSubsampling: '4:2:0'})
      .toBuffer();
    if (jpeg.length <= heaviestPhoto || quality < 30) return jpeg;
  }
}

function drawRuler(scale: number): string {
  const length = 100 * scale;
  const [x, y] = [canvas.width - 40 - length, canvas.height - 48];
  const ticks = Array.from({length: 101}, (_, millimetre) => {
    const tall = millimetre % 10 === 0 ? 24 : millimetre % 5 === 0 ? 16 : 10;
    const at = round(x + millimetre * scale);
    return `M${at} ${y}v${tall}`;
  });
  return (
    `<rect x="${round(x - 14)}" y="${y}" width="${round(length + 28)}" height="34" rx="3" fill="#d6b782" stroke="#9c7d49"/>` +
    `<path d="${ticks.join('')}" stroke="#4a3820" stroke-width="1.5" stroke-linecap="butt"/>`
  );
}
