import type {Length} from '../knitting/quantity.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {sizeAsSent} from './parts/measurements.ts';
import {showNumber} from './parts/show-number.ts';

const pairs = [
  {limit: 'sides', edges: ['left', 'right'], size: 'height'},
  {limit: 'ends', edges: ['top', 'bottom'], size: 'width'},
] as const;

/**
 * Opposite edges of a piece are as long as each other, within the tolerance of the syllabus (`evenness`).
 *
 * Why: a left edge longer than the right one shows that purl rows are worked looser than knit rows at one side, and a
 * top wider than the bottom that the tension changed on the way; it is the first thing an assessor measures. The size
 * comes first: an edge that is too short for the syllabus is the finding of `piece-too-small`.
 *
 * Example: `left: 10.6 cm, right: 11.4 cm` with `evenness: {sides: 5 mm}`. A shaped piece needs a requirement with a
 * tolerance of its own.
 */
export const unevenEdges: Rule = {
  id: 'uneven-edges',
  summary: 'opposite edges of a piece are as long as each other, within the tolerance of the syllabus',
  severity: 'warning',
  check(binder, report) {
    for (const item of binder.items) {
      const sent = sizeAsSent(item);
      const limits = item.requirement?.limits;
      for (const {limit, edges, size} of pairs) {
        const tolerance = limits?.evenness?.[limit];
        const [first, second] = edges.map((edge) => sent?.size[edge]);
        if (!sent || !tolerance || !first || !second) continue;
        const isTooShort = (edge: Length) =>
          limits?.size?.[size] && edge.millimetres.compare(limits.size[size].millimetres) < 0;
        const difference = first.millimetres.minus(second.millimetres).absolute();
        if (difference.compare(tolerance.millimetres) <= 0 || isTooShort(first) || isTooShort(second))
          continue;
        report({
          file: item.file,
          ...scalarAt(item.places, [...sent.path, edges[1]], second.text),
          message: `the ${edges[0]} and ${edges[1]} edges differ by \`${showNumber(difference)} mm\`; the syllabus allows \`${tolerance.text}\``,
          hint: 'Measure again with the piece lying loose; if it holds, work it again with an eye on the tension.',
          related: [
            {
              file: item.file,
              place: valueAt(item.places, [...sent.path, edges[0]]),
              message: `the ${edges[0]} edge measures \`${first.text}\``,
            },
          ],
        });
      }
    }
  },
};
