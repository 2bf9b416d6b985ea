/**
 * What patterns call a yarn: main and contrast colour, and the plain names of colours. They say nothing of a count.
 */
export const colourWords: readonly string[] = (
  'mc cc white black cream ecru oatmeal fawn natural grey gray brown red pink rose crimson scarlet claret magenta maroon ' +
  'orange amber gold yellow green olive teal turquoise blue navy indigo lilac mauve violet purple drab'
).split(' ');
