import type * as z from 'zod';
import {paperSizes} from './paper-sizes.ts';
import type {labelSheetNames} from './print-choices.ts';
import type {labelSheetSchema} from './schema/cut-out-settings.ts';

/** A sheet of labels: its paper, how many labels it has and where they are; measures in millimetres. */
export interface LabelSheet {
  readonly paper: keyof typeof paperSizes;
  readonly columns: number;
  readonly rows: number;
  readonly width: number;
  readonly height: number;
  /** From the left and top edge of the paper to the first label. */
  readonly left: number;
  readonly top: number;
  readonly gapAcross: number;
  readonly gapDown: number;
}

type LabelSheetName = (typeof labelSheetNames)[number];
type LabelSheetSetting = LabelSheetName | z.output<typeof labelSheetSchema>;

/**
 * Sheets as they are commonly sold: 21 labels on A4 at a pitch of 66.0 × 38.1 mm, the first 15.15 mm from the top; 10
 * cards of 3½ × 2 in on Letter edge to edge, ½ in from the top and ¾ in from the left (common practice, no source). Both
 * lie in the middle of their paper, from which the left margin of the 21 follows.
 */
const standardSheets: Readonly<Record<LabelSheetName, LabelSheet>> = {
  '21 of 63.5 x 38.1 mm': {
    paper: 'A4',
    columns: 3,
    rows: 7,
    width: 63.5,
    height: 38.1,
    left: 7.25,
    top: 15.15,
    gapAcross: 2.5,
    gapDown: 0,
  },
  '10 of 3.5 x 2 in': {
    paper: 'Letter',
    columns: 2,
    rows: 5,
    width: 88.9,
    height: 50.8,
    left: 19.05,
    top: 12.7,
    gapAcross: 0,
    gapDown: 0,
  },
};

/** A sheet by its name, or as its measures say; what they leave out of the margins puts the labels in the middle. */
export function labelSheetOf(setting: LabelSheetSetting): LabelSheet {
  if (typeof setting === 'string') return standardSheets[setting];
  const {paper, columns, rows} = setting;
  const width = setting.width.millimetres.toNumber();
  const height = setting.height.millimetres.toNumber();
  const gapAcross = setting['gap-across']?.millimetres.toNumber() ?? 0;
  const gapDown = setting['gap-down']?.millimetres.toNumber() ?? 0;
  const size = paperSizes[paper];
  return {
    paper,
    columns,
    rows,
    width,
    height,
    left:
      setting.left?.millimetres.toNumber() ?? (size.width - columns * width - (columns - 1) * gapAcross) / 2,
    top: setting.top?.millimetres.toNumber() ?? (size.height - rows * height - (rows - 1) * gapDown) / 2,
    gapAcross,
    gapDown,
  };
}
