import type {Length} from '../../knitting/quantity.ts';
import type {Binder} from '../../model/binder.ts';
import {labelSheetOf} from '../../model/label-sheet.ts';
import {cuttingRim, paperSizes} from '../../model/paper-sizes.ts';

/** What a piece that is cut out, or a sheet of labels, takes in one direction, and what its paper has; in millimetres. */
export interface Extent {
  /** Where its measure is written in the binder file. */
  readonly path: readonly string[];
  readonly what: string;
  readonly measure: 'wide' | 'high';
  readonly taken: number;
  readonly there: number;
  /** How many times the written measure goes into what is taken. */
  readonly times: number;
}

type Settings = Binder['settings'];

/** The sizes that the binder file sets; those of our own fit. */
export function cutOutExtents(settings: Settings): readonly Extent[] {
  const {tags, inserts} = settings;
  const isFolded = tags.reverse === 'folded';
  const onPaper = [
    piece(settings, ['tags', 'width'], 'a tag', tags.width),
    piece(settings, ['tags', 'height'], isFolded ? 'an unfolded tag' : 'a tag', tags.height, {
      times: isFolded ? 2 : 1,
    }),
  ];
  return [
    ...(tags.sheet === undefined ? onPaper.flat() : labels(tags.sheet)),
    ...piece(settings, ['inserts', 'spine', 'width'], 'the spine', inserts?.spine?.width),
    // A spine may be as high as the paper: then only its sides are cut.
    ...piece(settings, ['inserts', 'spine', 'height'], 'the spine', inserts?.spine?.height, {rim: 0}),
    ...piece(settings, ['inserts', 'tabs', 'width'], 'a tab strip', inserts?.tabs?.width),
    ...piece(settings, ['inserts', 'tabs', 'height'], 'a tab strip', inserts?.tabs?.height),
  ];
}

function piece(
  {paper}: Settings,
  path: readonly string[],
  what: string,
  length: Length | undefined,
  {times = 1, rim = cuttingRim} = {},
): readonly Extent[] {
  if (length === undefined) return [];
  const isWidth = path.at(-1) === 'width';
  const {width, height} = paperSizes[paper];
  return [
    {
      path,
      what,
      measure: isWidth ? 'wide' : 'high',
      taken: times * length.millimetres.toNumber(),
      there: (isWidth ? width : height) - 2 * rim,
      times,
    },
  ];
}

/** A margin that is not set is what the labels leave, and none where they leave nothing. */
function labels(setting: NonNullable<Settings['tags']['sheet']>): readonly Extent[] {
  const {paper, columns, rows, width, height, left, top, gapAcross, gapDown} = labelSheetOf(setting);
  const path = ['tags', 'sheet'];
  return [
    {
      path: [...path, 'width'],
      what: `a row of ${columns} labels, with its left margin,`,
      measure: 'wide',
      taken: Math.max(left, 0) + columns * width + (columns - 1) * gapAcross,
      there: paperSizes[paper].width,
      times: columns,
    },
    {
      path: [...path, 'height'],
      what: `a column of ${rows} labels, with its top margin,`,
      measure: 'high',
      taken: Math.max(top, 0) + rows * height + (rows - 1) * gapDown,
      there: paperSizes[paper].height,
      times: rows,
    },
  ];
}
