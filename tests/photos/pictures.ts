import sharp, {type Sharp} from 'sharp';

/** A picture of `width` × `height` pixels: rows of light and dark like a knitted fabric, its top left quarter red. */
export function drawFabric(width: number, height: number): Sharp {
  const pixels = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const red = x < width / 2 && y < height / 2;
      const shade = 60 + ((x * 7 + y * 13) % 40);
      pixels.set(red ? [220, 20, 20] : [shade, shade, shade], (y * width + x) * 3);
    }
  }
  return sharp(pixels, {raw: {width, height, channels: 3}});
}

/** Red, green and blue of one pixel of an encoded picture. */
export async function pixelAt(picture: Uint8Array, x: number, y: number): Promise<readonly number[]> {
  const {data, info} = await sharp(picture).removeAlpha().raw().toBuffer({resolveWithObject: true});
  const at = (y * info.width + x) * info.channels;
  return [...data.subarray(at, at + 3)];
}
