import {formatLength, formatLengthDifference, type UnitOrder} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {lengthOf, summarizeGauge} from '../knitting/gauge.ts';
import type {GaugeCount, Length} from '../knitting/quantity.ts';
import {type CountUnit, type Millimetres, millimetres, rows, stitches} from '../knitting/units.ts';
import type {Item} from '../model/binder.ts';
import {failure, type Problem, type Result, success} from '../support/result.ts';
import {count, length, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, withDefault} from './attributes.ts';
import {computedFigure} from './computed-figure.ts';
import {computed} from './define-table.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {measuredStates} from './measured-states.ts';
import {sizeNumbers} from './size-numbers.ts';

interface Measure {
  readonly name: 'width' | 'length';
  readonly counts: readonly number[];
  readonly unit: CountUnit;
  readonly less: number;
  readonly plus: Length | null;
}

/** Two lengths that are shown alike are alike: what is stated is rounded to the millimetre. */
const shownAlike = new Fraction(1n, 1n);

/** `::finished-size`: width and length in every size, from the counts and the pattern's own gauge. */
export const finishedSizeTable = arithmeticTable({
  id: 'finished-size',
  summary: "the finished width and length of every size, from the counts and the pattern's gauge",
  example: '::finished-size{stitches="62 (66, 70)" selvedges=2 rows="82 (92, 102)" plus-length="5 cm"}',
  attributes: {
    stitches: optional(sizeNumbers),
    selvedges: withDefault(count, 0),
    'plus-width': optional(length),
    rows: optional(sizeNumbers),
    'plus-length': optional(length),
  },
  compute(values, binder, item) {
    const measures: Measure[] = [
      ...(values.stitches
        ? [
            {
              name: 'width',
              unit: 'stitches',
              counts: values.stitches,
              less: values.selvedges,
              plus: values['plus-width'],
            } as const,
          ]
        : []),
      ...(values.rows
        ? [{name: 'length', unit: 'rows', counts: values.rows, less: 0, plus: values['plus-length']} as const]
        : []),
    ];
    if (measures.length === 0) {
      return unreadable(
        'neither stitches nor rows are said',
        'Write the stitches across, the rows, or both, such as `stitches="62 (66, 70)" rows="82 (92, 102)"`.',
      );
    }
    const order = binder.settings.units;
    const found = measures.map((measure) => measured(measure, item, order));
    const problems = found.flatMap((each) => (each.ok ? [] : each.problems));
    if (problems.length > 0) return failure(...problems);
    const lines = found.flatMap((each) => (each.ok ? [each.value] : []));
    const names = sizesOf(item, Math.max(...measures.map(({counts}) => counts.length)));
    return success(
      computed(() =>
        computedFigure({
          name: 'finished-size',
          caption: `Finished size of ${item.id}`,
          columns: ['Measure', ...names],
          groups: [
            {
              title: null,
              lines: lines.map(({label, lengths}) => ({
                label,
                cells: names.map((_, size) => formatLength(at(lengths, size), order)),
              })),
            },
          ],
          drawings: [],
          formulas: lines.map(({formula}) => formula),
          rounding: roundingWords(lengthRounding),
          source: 'Source: plain arithmetic on the counts and the gauge.',
        }),
      ),
    );
  },
});

interface MeasuredLine {
  readonly label: string;
  readonly lengths: readonly Millimetres[];
  readonly formula: string;
}

function measured(measure: Measure, item: Item, order: UnitOrder): Result<MeasuredLine> {
  const {name, unit, counts, less, plus} = measure;
  const gauge = gaugeOf(item, unit);
  if (gauge === null) {
    return unreadable(
      `\`${item.id}\` states no gauge in ${unit}`,
      `Write it in the front matter, such as \`gauge: {stitches: 20 over 10 cm, rows: 28 over 10 cm}\`.`,
    );
  }
  const extra = plus?.millimetres ?? millimetres(0);
  const lengths = counts.map((stated) => {
    const worked = Math.max(0, stated - less);
    const alone =
      unit === 'stitches'
        ? lengthOf(stitches(worked), summarizeGauge<'stitches'>([gauge]).mean)
        : lengthOf(rows(worked), summarizeGauge<'rows'>([gauge]).mean);
    return millimetres(alone.plus(extra));
  });
  const wrong = differences(measure, lengths, item, order);
  if (wrong.length > 0) return failure(...wrong);
  const lessWords = less > 0 ? ` less ${less} for the selvedges` : '';
  const plusWords = plus ? ` + ${formatLength(plus.millimetres, order)}` : '';
  return success({
    label: name === 'width' ? 'Width' : 'Length',
    lengths,
    formula: `${name === 'width' ? 'Width' : 'Length'}: ${unit}${lessWords} (${inSizes(counts)}) ÷ gauge (${gauge.text})${plusWords}.`,
  });
}

/** Where the front matter states another size, one of the two is wrong. */
function differences(
  {name}: Measure,
  lengths: readonly Millimetres[],
  item: Item,
  order: UnitOrder,
): readonly Problem[] {
  const stated = item.kind === 'pattern' ? item.fields.sizes : [];
  return stated.flatMap((size, index) => {
    const said = size[name];
    if (!said || index >= Math.max(lengths.length, 1)) return [];
    const computedLength = at(lengths, index);
    const off = computedLength.minus(said.millimetres);
    if (off.compare(shownAlike) <= 0 && off.compare(Fraction.zero.minus(shownAlike)) >= 0) return [];
    return [
      {
        message: `the ${name} of size \`${size.name}\` comes to ${formatLength(computedLength, order)}, the front matter states \`${said.text}\`: off by ${formatLengthDifference(millimetres(off), order)}`,
        hint: 'Check the counts and the gauge, or the size under `sizes`.',
        span: {start: 0, end: 0},
      },
    ];
  });
}

/** A pattern states its gauge; of a piece it is what was measured last. */
function gaugeOf(item: Item, unit: CountUnit): GaugeCount | null {
  if (item.kind === 'pattern') return item.fields.gauge?.[unit] ?? null;
  return measuredStates(item).at(-1)?.[unit][0] ?? null;
}

function sizesOf(item: Item, columns: number): readonly string[] {
  const stated = item.kind === 'pattern' ? item.fields.sizes.map(({name}) => name) : [];
  if (stated.length >= columns && stated.length > 0) return stated;
  return Array.from({length: columns}, (_, index) => (columns === 1 ? 'finished' : `size ${index + 1}`));
}

/** One number stands for all sizes. */
function at(lengths: readonly Millimetres[], size: number): Millimetres {
  return lengths[size] ?? lengths[0] ?? millimetres(0);
}

function inSizes([first = 0, ...others]: readonly number[]): string {
  return others.length === 0 ? `${first}` : `${first} (${others.join(', ')})`;
}
