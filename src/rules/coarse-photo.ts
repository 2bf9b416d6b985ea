import {Fraction} from '../knitting/fraction.ts';
import type {Rule} from './define-rule.ts';
import {photoUses} from './parts/photo-uses.ts';
import {showNumber} from './parts/show-number.ts';

const millimetresPerInch = Fraction.ofRatio(254, 10);

/**
 * A photo has enough pixels for the width at which it is printed: `photo-dpi` of the binder file to the inch.
 *
 * Why: below that, single stitches blur, and they are what the picture is there to show. The printed width is the
 * photo's own `width`, or 80 mm. 150 pixels to the inch as the least for print seen at arm's length: common practice,
 * no source.
 *
 * Example: a picture 400 pixels wide, printed 80 mm wide, has 127 pixels to the inch.
 */
export const coarsePhoto: Rule = {
  id: 'coarse-photo',
  summary: 'a photo has enough pixels for the width at which it is printed',
  severity: 'warning',
  check(binder, report) {
    const asked = binder.settings['photo-dpi'];
    for (const {item, name, printedMillimetres, place, actual} of photoUses(binder)) {
      const facts = name === null ? undefined : binder.photos.get(name);
      if (!facts?.ok || printedMillimetres.compare(Fraction.zero) <= 0) continue;
      const inches = printedMillimetres.dividedBy(millimetresPerInch);
      const pixelsPerInch = Fraction.ofInteger(facts.width).dividedBy(inches);
      if (pixelsPerInch.compare(Fraction.ofInteger(asked)) >= 0) continue;
      const needed = Math.ceil(inches.times(Fraction.ofInteger(asked)).toNumber());
      const printed = `${showNumber(printedMillimetres)} mm`;
      report({
        file: item.file,
        place,
        message: `the photo \`${name}\` has \`${showNumber(pixelsPerInch)}\` pixels to the inch when printed \`${printed}\` wide; \`${asked}\` are asked`,
        hint: `It is ${facts.width} pixels wide: use one of ${needed} or more, or print it smaller with a \`width\`.`,
        ...(actual === undefined ? {} : {actual}),
      });
    }
  },
};
