import {plural} from '../../support/plural.ts';
import type {Problem} from '../../support/result.ts';
import {constant, type LinearForm, minus, showForm} from './linear-form.ts';
import type {Landmark} from './row-syntax.ts';
import type {RowTrouble} from './row-trouble.ts';

interface Counts {
  readonly used: LinearForm;
}

const placeWords: Readonly<Record<Landmark, string>> = {
  marker: 'marker',
  gap: 'bound-off gap',
  turn: 'turning place',
  'double stitch': 'double stitch',
  'round start': 'beginning of a round',
};

/** The trouble as a knitter would tell it: which row, how many over or short, inside which repeat. */
export function describeTrouble({trouble, span}: RowTrouble, label: string, {used}: Counts): Problem {
  const row = `\`${label}\``;
  switch (trouble.kind) {
    case 'left over':
      return {
        message: `${row} uses ${sts(used)} and ${sts(trouble.left)} ${isOne(trouble.left) ? 'is' : 'are'} left over`,
        hint: 'Check the numbers of the row and the count at the end of the row before.',
        span,
      };
    case 'too few': {
      const short = minus(trouble.needed, trouble.found);
      return {
        message: `${row} is ${sts(short)} short: ${sts(trouble.needed)} ${isOne(trouble.needed) ? 'is' : 'are'} needed here and ${showForm(trouble.found)} ${isOne(trouble.found) ? 'is' : 'are'} left`,
        hint: 'Check the numbers of the row and the count at the end of the row before.',
        span,
      };
    }
    case 'repeat not whole': {
      const {found, uses, over} = trouble;
      return {
        message: `${sts(constant(over))} ${over === 1 ? 'is' : 'are'} left over inside the repeat of ${row}: ${sts(found)} for repeats of ${uses}`,
        hint: `The stitches at the repeat must be a multiple of ${uses}: check the repeat, the stitches before and after it, and the count of the row before (${over} fewer or ${uses - over} more would do).`,
        span,
      };
    }
    case 'no repeat':
      return {
        message: `the repeat of ${row} needs ${sts(constant(trouble.uses))} and ${isNegative(trouble.found) ? `is ${sts(minus(constant(0), trouble.found))} short even of what comes after it` : `finds ${showForm(trouble.found)}`}`,
        hint: 'Check the stitches before and after the repeat, and the count at the end of the row before.',
        span,
      };
    case 'endless repeat':
      return {
        message: `the repeat of ${row} uses no stitches, so it has no end`,
        hint: 'Say how many times it is worked.',
        span,
      };
    case 'unclear end':
      return {
        message: `how often the repeat of ${row} is worked cannot be told`,
        hint: 'Say how far it goes, such as `rep from * to last 3 sts`, or how many times.',
        span,
      };
    case 'no landmark':
      return {
        message: `${row} goes to ${trouble.name === null ? `a ${placeWords[trouble.landmark]}, and none lies ahead` : `marker ${trouble.name}, which was not placed or lies behind`}`,
        hint: 'Check that it was placed in a row before and not passed already in this one.',
        span,
      };
    case 'no marker here':
      return {
        message: `${row} has no marker at this place${trouble.ahead ? `; the next lies ${sts(trouble.ahead)} further on` : ''}`,
        hint: 'Check the stitches before it and where the marker was placed.',
        span,
      };
    case 'too close':
      return {
        message: `${row} has already come closer to the ${placeWords[trouble.landmark]} than it says`,
        hint: 'Check the number of stitches that are to be left.',
        span,
      };
    case 'too many markers':
      return {
        message: `${row} places more markers than can be followed`,
        hint: 'Place markers only where the rows need them.',
        span,
      };
    case 'too many':
      return {
        message: `the counts of ${row} grow beyond any knitting`,
        hint: 'Check the numbers of the row.',
        span,
      };
  }
}

function sts(count: LinearForm): string {
  return count.each === 0 ? plural(count.fixed, 'stitch', 'stitches') : `${showForm(count)} stitches`;
}

function isOne(count: LinearForm): boolean {
  return count.each === 0 && count.fixed === 1;
}

function isNegative(count: LinearForm): boolean {
  return count.each === 0 && count.fixed < 0;
}
