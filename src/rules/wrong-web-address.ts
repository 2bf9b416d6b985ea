import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * The `URL` of a source is a whole web address.
 *
 * Why: it is printed for the assessor to type, and only `http` and `https` lead to a page; anything else is not linked.
 *
 * Example: `URL: www.example.org/ribs` without `https://`, or an address with a space in it.
 */
export const wrongWebAddress: Rule = {
  id: 'wrong-web-address',
  summary: 'the `URL` of a source is a whole web address',
  severity: 'error',
  check(binder, report) {
    for (const {source, file, places, path} of binder.library) {
      const {URL: address} = source;
      if (address === undefined || isWebAddress(address)) continue;
      report({
        file,
        ...scalarAt(places, [...path, 'URL'], address),
        message: `\`${address}\` is not a whole web address`,
        hint: 'Copy it from the line of the browser, beginning with `https://`.',
      });
    }
  },
};

function isWebAddress(text: string): boolean {
  if (!/^https?:\/\/[^\s<>"\\^`{|}]+$/i.test(text)) return false;
  return URL.canParse(text) && new URL(text).hostname.includes('.');
}
