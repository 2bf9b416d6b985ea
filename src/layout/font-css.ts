import {cssString} from './css-string.ts';
import type {FontFace} from './layout-input.ts';

/** One `@font-face` rule per font file, the file within it as a data URI. */
export function fontCss(fonts: readonly FontFace[]): string {
  return fonts
    .map(
      ({family, weight, style, unicodeRange, source}) =>
        `@font-face{font-family:${cssString(family)};font-weight:${weight};font-style:${style};` +
        `${unicodeRange === null ? '' : `unicode-range:${unicodeRange};`}` +
        `src:url(${cssString(source)}) format("woff2")}`,
    )
    .join('\n');
}
