import {mostCounted} from '../knitting/cannot-work.ts';
import {sizeSteps} from '../knitting/size-steps.ts';
import {type Result, success} from '../support/result.ts';
import {arithmeticFigure, type FigureLine} from './arithmetic-figure.ts';
import {unreadable} from './attribute-readers.ts';
import {arithmeticTable, required} from './attributes.ts';
import {sizeNumbers} from './size-numbers.ts';

/** `::sizes`: the counts of several sizes, and the one that breaks the step of the others. */
export const sizesTable = arithmeticTable({
  id: 'sizes',
  summary: 'the counts of several sizes and the one that breaks the step of the others',
  example: '::sizes{counts="92 (106, 120, 134); 19 (16, 23, 30)"}',
  attributes: {counts: required(sizedCounts)},
  compute({counts}) {
    const lines = counts.map((row): FigureLine => [sizedWords(row), verdict(row)]);
    const odd = counts.flatMap((row) => {
      const found = sizeSteps(row).odd;
      return found
        ? [`In ${sizedWords(row)}, look again at ${found.count}: ${found.expected} would keep the step.`]
        : [];
    });
    return success(
      arithmeticFigure({
        name: 'sizes',
        caption: 'Several sizes, step by step',
        given: counts.map((row): FigureLine => ['Counts', sizedWords(row)]),
        result: lines,
        instructions: odd.length > 0 ? odd : ['No single count breaks a step.'],
        formulas: [
          'Step: each size less the one before it. One count is odd when changing it alone makes all steps equal.',
        ],
        rounding: 'Nothing is rounded.',
        source:
          'Source: common practice, no source; unequal steps may be meant, so this is a hint and no proof.',
      }),
    );
  },
});

function verdict(counts: readonly number[]): string {
  const {step, odd} = sizeSteps(counts);
  const differences = counts.slice(1).map((count, index) => count - (counts[index] ?? 0));
  const steps = `steps ${differences.map((difference) => `${difference}`.replace('-', '−')).join(', ')}`;
  if (step === null) return `${steps}: no one step`;
  return odd
    ? `${steps}: ${step} throughout if ${odd.count} were ${odd.expected}`
    : `${steps}: ${step} throughout`.replace('-', '−');
}

function sizedWords([first, ...others]: readonly number[]): string {
  return `${first} (${others.join(', ')})`;
}

/** `92 (106, 120, 134)`, rows apart by `;`; at least two sizes. */
function sizedCounts(text: string): Result<readonly (readonly number[])[]> {
  const rows: (readonly number[])[] = [];
  for (const written of text.split(';')) {
    const counts = sizeNumbers(written);
    if (!counts.ok || counts.value.length < 2) {
      return unreadable(
        `\`${written.trim()}\` is not a count in several sizes`,
        `Write the sizes up to ${mostCounted} as \`92 (106, 120, 134)\`, rows apart by \`;\`.`,
      );
    }
    rows.push(counts.value);
  }
  return success(rows);
}
