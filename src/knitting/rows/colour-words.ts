/** What patterns call a yarn: letters, main and contrast colour, and the plain names of colours. They say nothing of a count. */
export const colourWords: readonly string[] =
  'mc cc white black cream natural grey gray brown red pink orange yellow green blue navy purple'.split(' ');
