import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * A citation style of one's own prints the page that is cited.
 *
 * Why: many styles of journals print a bare number or name; then no page that was noted would reach the assessor.
 *
 * Example: `csl: journal.csl` for a style whose citations never print the locator.
 */
export const styleWithoutPage: Rule = {
  id: 'style-without-page',
  summary: 'a citation style of one’s own prints the page that is cited',
  severity: 'warning',
  check({settings: {csl}, ownStyle, settingsFile, settingsPlaces}, report) {
    if (csl === undefined || ownStyle === null || ownStyle.printsLocator) return;
    report({
      file: settingsFile,
      ...scalarAt(settingsPlaces, ['csl'], csl),
      message: `the citation style \`${csl}\` prints no pages`,
      hint: 'Take another style, or use `citation-style: numeric`, which prints them.',
    });
  },
};
