import {type OwnStyle, readOwnStyle} from '../references/own-style.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {Places} from '../yaml/places.ts';
import type {ReadingFault} from './reading-rules.ts';

/** The style that `csl:` of the binder file names; null without one, and when it cannot be used. */
export function ownStyleOf(
  csl: string | undefined,
  places: Places,
  texts: ReadonlyMap<string, string>,
): {readonly style: OwnStyle | null; readonly faults: readonly ReadingFault[]} {
  if (csl === undefined) return {style: null, faults: []};
  const path = `content/${csl.replace(/^\.\//, '')}`;
  const text = texts.get(path);
  const near = text === undefined ? nearestName(path, texts.keys()) : null;
  const style = text === undefined ? `there is no file \`${path}\`` : readOwnStyle(text);
  if (typeof style !== 'string') return {style, faults: []};
  const hint = near
    ? `Write \`${near.replace('content/', '')}\` if that is the style.`
    : 'Put a style of the Citation Style Language, a file that ends in `.csl`, into the folder `content`; or take `csl` out.';
  return {style: null, faults: [unusableStyle(csl, style, hint, places)]};
}

export function unusableStyle(csl: string, why: string, hint: string, places: Places): ReadingFault {
  return {
    rule: 'citation-style',
    place: places.value(['csl']),
    message: `the citation style \`${csl}\` cannot be used: ${why}`,
    hint,
  };
}
