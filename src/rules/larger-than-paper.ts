import type {Binder} from '../model/binder.ts';
import {labelSheetOf} from '../model/label-sheet.ts';
import type {Fault, Rule} from './define-rule.ts';
import {cutOutExtents} from './parts/cut-out-extents.ts';

type FaultHere = Pick<Fault, 'message' | 'hint'> & {readonly path: readonly string[]};

/**
 * Tags, labels, spine and tab strips fit the paper that they are printed on, and what is set about a sheet of labels can be
 * done with one.
 *
 * Why: what is larger than the paper would be printed cut off, and a sheet of labels would be spoilt.
 *
 * Example: three columns of labels 70 mm wide with 2.5 mm between them take 215 mm, and A4 is 210 mm wide.
 */
export const largerThanPaper: Rule = {
  id: 'larger-than-paper',
  summary: 'tags, labels, spine and tab strips fit the paper that they are printed on',
  severity: 'error',
  check({settings, settingsFile: file, settingsPlaces}, report) {
    for (const {path, ...fault} of [...tooLarge(settings), ...withoutLabel(settings)]) {
      report({file, place: settingsPlaces.value(path), ...fault});
    }
  },
};

function tooLarge(settings: Binder['settings']): readonly FaultHere[] {
  return (
    cutOutExtents(settings)
      // Sums of millimetres may differ in their last binary digits.
      .filter(({taken, there}) => taken > there + 0.001)
      .map(({path, what, measure, taken, there, times}) => ({
        path,
        message: `${what} is \`${show(taken)} mm\` ${measure}, and there is room for \`${show(there)} mm\``,
        hint: `Make \`${path.at(-1)}\` smaller by \`${showUp((taken - there) / times)} mm\`${path.includes('sheet') ? ', or write fewer labels, smaller gaps or a smaller margin' : ''}.`,
      }))
  );
}

function withoutLabel({tags}: Binder['settings']): readonly FaultHere[] {
  const {sheet, reverse, 'first-label': first} = tags;
  const path = ['tags', 'first-label'];
  if (sheet === undefined) {
    if (first === 1) return [];
    return [
      {
        path,
        message: `printing begins on label \`${first}\`, but tags are printed on plain paper`,
        hint: 'Name the sheet of labels in `sheet`, or take `first-label` out.',
      },
    ];
  }
  const {columns, rows} = labelSheetOf(sheet);
  const afterLast: FaultHere = {
    path,
    message: `printing begins on label \`${first}\`, but a sheet has \`${columns * rows}\``,
    hint: `Write a number from 1 to ${columns * rows}.`,
  };
  const folded: FaultHere = {
    path: ['tags', 'reverse'],
    message: 'a tag that is `folded` is twice as high as a label',
    hint: 'Write `none`, or `printed` for cards that may be printed on both sides; or take `sheet` out.',
  };
  return [...(first > columns * rows ? [afterLast] : []), ...(reverse === 'folded' ? [folded] : [])];
}

/** Hundredths of a millimetre. */
function show(millimetres: number): string {
  return String(Math.round(millimetres * 100) / 100);
}

/** The next hundredth above, so that what is taken away is enough; float noise counts for nothing. */
function showUp(millimetres: number): string {
  return String(Math.ceil(millimetres * 100 - 0.001) / 100);
}
