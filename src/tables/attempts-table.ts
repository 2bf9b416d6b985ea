import type {Element} from 'hast';
import {edgeEvenness} from '../knitting/edge-evenness.ts';
import {
  formatLengthDifference,
  formatMeasured,
  formatPercent,
  type UnitOrder,
} from '../knitting/format-quantity.ts';
import type {CountUnit, Millimetres} from '../knitting/units.ts';
import type {Binder, Item} from '../model/binder.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import type {BinderSettings} from '../model/schema/binder-settings.ts';
import type {Attempt} from '../model/schema/item-fields.ts';
import {englishList} from '../support/english-list.ts';
import {longDate} from '../support/long-date.ts';
import {setTypography} from '../support/typography.ts';
import {computedFigure, type FigureGroup} from './computed-figure.ts';
import {computed, notComputed, type Table} from './define-table.ts';
import {edgePlot} from './edge-plot.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {across, type GaugeColumn, type GaugeDirection, gaugeColumns, upward} from './gauge-direction.ts';
import {countsText} from './gauge-lines.ts';
import {gaugePlot} from './gauge-plot.ts';
import {formatOverBoth, gaugeScales} from './gauge-scale.ts';

/** `::attempts`: how the piece came out from try to try, with the left edge against the right and the gauge as drawings. */
export const attemptsTable: Table = {
  id: 'attempts',
  summary: 'each attempt with its edges, gauge, what went wrong and what helped, and the trend drawn',
  compute: attemptsContent,
};

function attemptsContent(binder: Binder, item: Item): ComputedTable {
  const attempts = 'attempts' in item.fields ? item.fields.attempts : [];
  if (attempts.length > 0) return computed(() => attemptsFigure(binder, item.id, attempts));
  return notComputed(
    `\`${item.id}\` has no attempts`,
    'attempts' in item.fields
      ? 'Write them under `attempts`, such as `- {on: 2026-03-14, edges: {left: 10.6 cm, right: 11.1 cm}, wrong: purl rows too loose}`.'
      : 'Name the piece that was tried, such as `::attempts{of=S-07}`.',
  );
}

function attemptsFigure({settings}: Binder, id: string, attempts: readonly Attempt[]): Element {
  const order = settings.units;
  const hasEdges = attempts.some(({edges}) => edges?.left && edges.right);
  const states = attempts.map((attempt, index) => ({
    label: `attempt ${index + 1}`,
    on: attempt.on,
    when: null,
    stitches: attempt.stitches,
    rows: attempt.rows,
    size: {},
  }));
  const wales = gaugeColumns(across, states);
  const courses = gaugeColumns(upward, states);
  const hasGauge = [...wales, ...courses].some(({summary}) => summary !== null);
  const sides = states.map(({label}, index) => {
    const edges = attempts[index]?.edges;
    return {label, left: edges?.left?.millimetres ?? null, right: edges?.right?.millimetres ?? null};
  });
  const measuredSides = sides.filter(({left, right}) => left ?? right);
  const isMeasured = measuredSides.length > 0 || hasGauge;
  return computedFigure({
    name: 'attempts',
    caption: `Attempts at ${id}, the first try first`,
    columns: ['Attempt', 'What was recorded'],
    groups: attempts.map((attempt, index) => ({
      title: heading(attempt, index, settings.language),
      lines: [
        ...edgeLines(attempt, order),
        ...gaugeLine(across, wales[index], order),
        ...gaugeLine(upward, courses[index], order),
        ...wordLines(attempt),
      ],
    })),
    drawings: [
      ...(measuredSides.length > 1 ? [edgePlot(measuredSides, order)] : []),
      ...gaugeDrawing(across, wales, order),
      ...gaugeDrawing(upward, courses, order),
    ],
    formulas: [
      ...(hasEdges
        ? ['Left minus right; in percent, 100 × that difference without its sign ÷ the mean of both edges.']
        : []),
      ...(hasGauge
        ? [
            'Mean: each count divided by the length it was counted over, all added up and divided by how many there are.',
          ]
        : []),
    ],
    rounding: isMeasured
      ? `What was measured stands as measured. ${roundingWords(lengthRounding, ...gaugeScales(order).map(({rounding}) => rounding), 'percent to one decimal')}`
      : 'Nothing was measured, and nothing is rounded.',
    source: isMeasured
      ? 'Source: plain arithmetic on what was measured.'
      : 'Source: the record kept while knitting.',
  });
}

type Lines = FigureGroup['lines'];

/** `Attempt 1, 14 March 2026, needles 4.5 mm`. */
function heading({on, needles}: Attempt, index: number, language: BinderSettings['language']): string {
  const used = needles ? [`needles ${setTypography(englishList(needles))}`] : [];
  return [`Attempt ${index + 1}`, longDate(on, language), ...used].join(', ');
}

function edgeLines({edges}: Attempt, order: UnitOrder): Lines {
  const {left, right} = edges ?? {};
  const measured = [
    ...(left ? [`left ${formatMeasured(left, order)}`] : []),
    ...(right ? [`right ${formatMeasured(right, order)}`] : []),
  ];
  if (measured.length === 0) return [];
  const apart =
    left && right ? `; left minus right ${difference(left.millimetres, right.millimetres, order)}` : '';
  return [{label: 'Edges', cells: [`${measured.join(', ')}${apart}`]}];
}

function difference(left: Millimetres, right: Millimetres, order: UnitOrder): string {
  const {difference: apart, percent} = edgeEvenness(left, right);
  const share = percent ? `, ${formatPercent(percent)}` : '';
  return `${formatLengthDifference(apart, order)}${share}`;
}

function gaugeLine<U extends CountUnit>(
  {title, short}: GaugeDirection<U>,
  column: GaugeColumn<U> | undefined,
  order: UnitOrder,
): Lines {
  if (!column?.summary) return [];
  const mean = formatOverBoth(column.summary.mean, short, order);
  const isOne = column.counts.length === 1;
  return [{label: title, cells: [isOne ? mean : `${countsText(column.counts, short)}; mean ${mean}`]}];
}

function wordLines({wrong, helped}: Attempt): Lines {
  return [
    ...(wrong ? [{label: 'What went wrong', cells: [setTypography(wrong)]}] : []),
    ...(helped ? [{label: 'What helped', cells: [setTypography(helped)]}] : []),
  ];
}

function gaugeDrawing<U extends CountUnit>(
  direction: GaugeDirection<U>,
  columns: readonly GaugeColumn<U>[],
  order: UnitOrder,
): readonly Element[] {
  const counted = columns.filter(({summary}) => summary !== null);
  return counted.length > 1 ? [gaugePlot(direction, counted, gaugeScales(order)[0])] : [];
}
