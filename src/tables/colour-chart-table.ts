import {colourAreas, yarnForEnds, yarnOverWidth} from '../knitting/chart/colour-areas.ts';
import {
  bobbinCounts,
  colourShares,
  crowdedRows,
  type Float,
  longFloats,
  neighbourContrasts,
} from '../knitting/chart/colour-facts.ts';
import type {ColourGrid} from '../knitting/chart/colour-grid.ts';
import {readChart} from '../knitting/chart/read-chart.ts';
import {formatLength, formatNumber, type UnitOrder} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {lengthOf} from '../knitting/gauge.ts';
import {wholeNotAbove} from '../knitting/rounding.ts';
import {type Gauge, type Millimetres, millimetres, stitches} from '../knitting/units.ts';
import {plural} from '../support/plural.ts';
import {failure, success} from '../support/result.ts';
import {count, itemNamed, length, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional} from './attributes.ts';
import {chartProportion} from './chart-proportion.ts';
import {chartBlock} from './chart-source.ts';
import {colourChartCaption} from './colour-chart-figure.ts';
import {drawColourChart} from './colour-drawing.ts';
import {computedFigure, type FigureGroup} from './computed-figure.ts';
import {computed} from './define-table.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';

/** A longer float is apt to catch. Common practice, no source: about 2.5 cm or 1 in. */
const longestFloat = millimetres(25);

type Line = FigureGroup['lines'][number];

/** `::colour-chart`: a chart of colours, and what it asks of the knitter. */
export const colourChartTable = arithmeticTable({
  id: 'colour-chart',
  summary:
    'a chart of colours with the stitches of each, the long floats, the bobbins and the contrast in grey',
  example: '::colour-chart{of=S-07 float="2.5 cm"}',
  attributes: {of: optional(itemNamed('of')), block: optional(count), float: optional(length)},
  compute(values, binder, item) {
    const shown = values.of ?? item;
    const block = chartBlock(shown, values.block, ['chart']);
    if (!block.ok) return block;
    const {chart, problems} = readChart(block.value.text);
    if (!chart) return failure(...problems);
    if (chart.kind === 'stitches') {
      return unreadable(
        `the chart of \`${shown.id}\` names no colours`,
        'Write its key with colours, such as `X = colour deep water #27414d`, or show it with `::chart`.',
      );
    }
    const {grid} = chart;
    const order = binder.settings.units;
    const {ratio, stitches: gauge, words} = chartProportion(shown, order);
    const caption = colourChartCaption(grid, shown);
    const limit = values.float?.millimetres ?? longestFloat;
    const isStranded = grid.method === 'stranded';
    return success(
      computed(() =>
        computedFigure({
          name: 'colour-chart',
          caption,
          columns: ['Colour', 'in the chart'],
          groups: [
            {title: 'Stitches', lines: shareLines(grid)},
            isStranded
              ? {title: 'Floats', lines: [...floatLines(grid, gauge, limit, order), ...crowdedLines(grid)]}
              : {title: 'Lengths of yarn', lines: [...bobbinLines(grid), ...areaLines(grid, gauge, order)]},
            {title: 'Contrast in greyscale', lines: contrastLines(grid)},
          ],
          // In its own item the block is drawn where it stands.
          drawings: shown === item ? [] : drawColourChart(grid, caption, ratio),
          formulas: [
            'Stitches: the squares of the chart as drawn, the repeat once. Share of yarn: stitches of the colour ÷ all stitches; floats and ends come on top.',
            isStranded
              ? 'Length of a float: stitches passed ÷ gauge.'
              : `Lengths of yarn: blocks of colour side by side in the row, each on a bobbin of its own. Each length: stitches ÷ gauge × ${yarnOverWidth}, and ${formatLength(millimetres(yarnForEnds), order)} for the two ends.`,
            'Contrast: (lighter + 0.05) ÷ (darker + 0.05) of the relative luminance; 1 is the same grey, 21 is black on white.',
            words,
          ],
          rounding: roundingWords('shares to the nearest percent', 'contrast to one decimal', lengthRounding),
          source:
            'Source: relative luminance and contrast ratio by the Web Content Accessibility Guidelines (WCAG) 2.2 of the W3C. Longest float, two colours in a row and yarn three times the width of its stitches: common practice, no source.',
        }),
      ),
    );
  },
});

function shareLines(grid: ColourGrid): Line[] {
  return colourShares(grid).map(({colour, stitches: found, share}) => ({
    label: nameOf(grid, colour),
    cells: [`${plural(found, 'stitch', 'stitches')}, ${Math.round(share * 100)}\u00a0% of the yarn`],
  }));
}

function floatLines(
  grid: ColourGrid,
  gauge: Gauge<'stitches'> | null,
  limit: Millimetres,
  order: UnitOrder,
): Line[] {
  const all = longFloats(grid, 0);
  const longest = Math.max(0, ...all.map((float) => float.stitches));
  const lengthWords = (passed: number) =>
    gauge ? `, ${formatLength(lengthOf(stitches(passed), gauge), order)}` : '';
  const first: Line = {
    label: 'Longest float',
    cells: [`passes ${plural(longest, 'stitch', 'stitches')}${lengthWords(longest)}`],
  };
  if (!gauge) return [first];
  const most = wholeNotAbove(limit.times(gauge));
  const long = all.filter((float) => float.stitches > most);
  const label = `Longer than ${formatLength(limit, order)}`;
  if (long.length === 0) return [first, {label, cells: ['none']}];
  return [
    first,
    ...long.map((float) => ({label, cells: [floatWords(grid, float) + lengthWords(float.stitches)]})),
  ];
}

function floatWords(grid: ColourGrid, {row, colour, firstStitch, stitches: passed}: Float): string {
  const side = grid.rows.find(({number}) => number === row)?.side === 'WS' ? 'left' : 'right';
  const last = firstStitch + passed - 1;
  const isWithin = last <= grid.width;
  const on = isWithin ? '' : ' and on into the next repeat';
  return `row ${row}, ${nameOf(grid, colour)} behind stitches ${firstStitch} to ${isWithin ? last : grid.width} from the ${side}${on}`;
}

function crowdedLines(grid: ColourGrid): Line[] {
  const crowded = crowdedRows(grid);
  const cells =
    crowded.length === 0 ? ['none'] : [crowded.map(({row, colours}) => `row ${row} (${colours})`).join(', ')];
  return [{label: 'Rows of more than two colours', cells}];
}

function bobbinLines(grid: ColourGrid): Line[] {
  const counts = bobbinCounts(grid);
  const groups: {first: number; last: number; bobbins: number}[] = [];
  for (const {row, bobbins} of counts) {
    const group = groups.at(-1);
    if (group?.bobbins === bobbins) group.last = row;
    else groups.push({first: row, last: row, bobbins});
  }
  return groups.map(({first, last, bobbins}) => ({
    label: first === last ? `Row ${first}` : `Rows ${first} to ${last}`,
    cells: [plural(bobbins, 'length', 'lengths')],
  }));
}

/** What to wind for each area of colour, in the order of joining. */
function areaLines(grid: ColourGrid, gauge: Gauge<'stitches'> | null, order: UnitOrder): Line[] {
  return colourAreas(grid).map(({colour, firstRow, lastRow, stitches: found}) => {
    const rows = firstRow === lastRow ? `row ${firstRow}` : `rows ${firstRow} to ${lastRow}`;
    const width = gauge ? lengthOf(stitches(found), gauge) : null;
    const length = width?.times(Fraction.ofInteger(yarnOverWidth)).plus(millimetres(yarnForEnds));
    const wound = length === undefined ? '' : `, ${formatLength(millimetres(length), order)}`;
    return {
      label: `${nameOf(grid, colour)}, ${rows}`,
      cells: [`${plural(found, 'stitch', 'stitches')}${wound}`],
    };
  });
}

function contrastLines(grid: ColourGrid): Line[] {
  return neighbourContrasts(grid).map(({colours: [a, b], contrast}) => ({
    label: `${nameOf(grid, a)} and ${nameOf(grid, b)}`,
    cells: [contrast === null ? 'not known: the key states no colour value' : contrastWords(contrast)],
  }));
}

/** Below 3 neighbouring shapes are hard to tell apart. Source: WCAG 2.2, success criterion 1.4.11. */
function contrastWords(contrast: number): string {
  const shown = formatNumber(new Fraction(BigInt(Math.round(contrast * 1000)), 1000n), 1);
  return contrast < 3 ? `${shown}, too near to tell apart in grey` : shown;
}

function nameOf(grid: ColourGrid, colour: number): string {
  return grid.colours[colour]?.name ?? '';
}
