import {formatAsWritten, formatNumber, type UnitOrder} from '../../knitting/format-quantity.ts';
import {Fraction} from '../../knitting/fraction.ts';
import {countOver} from '../../knitting/gauge.ts';
import {millimetresIn} from '../../knitting/length-unit.ts';
import type {Millimetres} from '../../knitting/units.ts';
import type {AttemptFacts} from '../../model/attempt-facts.ts';
import {longDate} from '../../support/long-date.ts';
import {gaugeScales} from '../../tables/gauge-scale.ts';
import {hung} from './hung.ts';

/** Signs of the longest bar. */
const longestBar = 20;

export interface AttemptsInput {
  readonly attempts: readonly AttemptFacts[];
  readonly order: UnitOrder;
  readonly language: 'en-GB' | 'en-US';
  readonly columns: number;
}

/** Each attempt with a bar for what its edges differ by, and the trend in one sentence. */
export function attemptsText({attempts, order, language, columns}: AttemptsInput): readonly string[] {
  const widest = attempts.reduce<Fraction>(
    (most, {difference}) => larger(most, difference?.absolute() ?? Fraction.zero),
    Fraction.zero,
  );
  const lines = attempts.flatMap((attempt, index) => {
    const {on, needles, difference, wrong, helped} = attempt;
    const head = [longDate(on, language), ...needles].join(', ');
    const indented = (text: string) => hung('      ', text, columns);
    return [
      ...hung(`  ${String(index + 1).padStart(2)}  `, head, columns),
      ...edgesInWords(attempt).flatMap(indented),
      ...(difference ? indented(`${bar(difference, widest)} ${apart(difference, order)}`.trim()) : []),
      ...gaugeInWords(attempt, order).flatMap(indented),
      ...(wrong === null ? [] : indented(`wrong: ${wrong}`)),
      ...(helped === null ? [] : indented(`helped: ${helped}`)),
    ];
  });
  return [...lines, ...trend(attempts, order).flatMap((text) => hung('  ', text, columns))];
}

/** `left 13.8 cm, right 14.3 cm`; nothing where no edge was measured. */
function edgesInWords({left, right}: AttemptFacts): readonly string[] {
  const edges = [
    ...(left ? [`left ${formatAsWritten(left)}`] : []),
    ...(right ? [`right ${formatAsWritten(right)}`] : []),
  ];
  return edges.length > 0 ? [edges.join(', ')] : [];
}

function bar(difference: Millimetres, widest: Fraction): string {
  if (difference.equals(Fraction.zero)) return '';
  const share = difference.absolute().dividedBy(widest).toNumber();
  return '#'.repeat(Math.max(1, Math.round(share * longestBar)));
}

/** `5 mm apart, the right edge longer`. */
function apart(difference: Millimetres, order: UnitOrder): string {
  const sign = difference.compare(Fraction.zero);
  const longer = sign === 0 ? '' : `, the ${sign > 0 ? 'left' : 'right'} edge longer`;
  return `${distance(difference, order)} apart${longer}`;
}

function distance(difference: Fraction, order: UnitOrder): string {
  return order === 'metric'
    ? `${formatNumber(difference.absolute(), 0)} mm`
    : `${formatNumber(difference.absolute().dividedBy(millimetresIn.in), 2)} in`;
}

function gaugeInWords({stitches, rows}: AttemptFacts, order: UnitOrder): readonly string[] {
  const [scale] = gaugeScales(order);
  const counts = [
    ...(stitches ? [`${formatNumber(countOver(stitches, scale.length), scale.decimals)} sts`] : []),
    ...(rows ? [`${formatNumber(countOver(rows, scale.length), scale.decimals)} rows`] : []),
  ];
  return counts.length > 0 ? [`${counts.join(', ')} ${scale.words}`] : [];
}

/** From the first attempt of which the edges are known to the last. */
function trend(attempts: readonly AttemptFacts[], order: UnitOrder): readonly string[] {
  const known = attempts.flatMap(({difference}) => difference?.absolute() ?? []);
  const [first, last] = [known[0], known.at(-1)];
  if (known.length < 2 || !first || !last) return [];
  return [
    `From the first to the last the edges went from ${distance(first, order)} apart to ${distance(last, order)}.`,
  ];
}

function larger(a: Fraction, b: Fraction): Fraction {
  return a.compare(b) < 0 ? b : a;
}
