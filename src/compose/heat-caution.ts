import {plainParagraphs} from '../markdown/plain-paragraphs.ts';
import type {Item} from '../model/binder.ts';
import type {SafeHtml} from '../model/composed.ts';

const heat =
  /(?<!\b(?:no|not|never|without|neither|nor)\s+)\b(?:steam(?:ed|ing|er)?|iron(?:ed|ing)?|boil(?:ed|ing)?|hot water)\b/i;

/** The usual cautions; common practice, no source. */
const caution =
  'Heat: the yarn’s care label and local rules come first. Try it on a swatch before the piece. Steam, irons and hot water burn: keep hands clear, and never leave a hot iron.' as SafeHtml;

/** The cautions that stand below an item that speaks of steam, irons or hot water; null for others, and for letters and reviews. */
export function heatCaution({kind, body, fields}: Item): SafeHtml | null {
  if (kind === 'letter' || kind === 'review') return null;
  const blocking = 'blocking' in fields ? (fields.blocking ?? '') : '';
  return [blocking, ...plainParagraphs(body)].some((text) => heat.test(text)) ? caution : null;
}
