/**
 * Draws the pictures of the worked example, so that it needs no camera: `draw-photos FOLDER [name…]` writes JPEG files
 * into the folder, all of them or those whose name begins as given.
 */
import {writeFile} from 'node:fs/promises';
import {join} from 'node:path';
import {colouredSwatches} from './draw-coloured-swatches.ts';
import {garments} from './draw-garments.ts';
import {jerseyPictures} from './draw-jersey.ts';
import {joinedSwatches} from './draw-joined-swatches.ts';
import {plainSwatches} from './draw-plain-swatches.ts';
import {rasterise} from './draw-scene.ts';
import {shapedSwatches} from './draw-shaped-swatches.ts';
import {vestPictures} from './draw-vest.ts';

const pictures = [
  ...plainSwatches,
  ...shapedSwatches,
  ...colouredSwatches,
  ...joinedSwatches,
  ...vestPictures,
  ...garments,
  ...jerseyPictures,
];
const [folder, ...names] = process.argv.slice(2);
if (folder === undefined) {
  console.error('Say into which folder the pictures go, such as content/photos.');
  process.exit(2);
}
for (const picture of pictures) {
  if (names.length > 0 && !names.some((name) => picture.file.startsWith(name))) continue;
  const jpeg = await rasterise(picture.svg());
  await writeFile(join(folder, picture.file), jpeg);
  console.log(`${picture.file}: ${Math.round(jpeg.length / 1000)} kB`);
}
