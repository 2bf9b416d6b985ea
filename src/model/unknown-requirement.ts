import type {Place} from '../diagnostics/finding.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {ReadingFault} from './reading-rules.ts';

/** An id that points to nothing in the syllabus, in the syllabus itself or in an answer from the assessors. */
export function unknownRequirement(id: string, known: Iterable<string>, place: Place): ReadingFault {
  const near = nearestName(id, known);
  return {
    rule: 'unknown-requirement',
    place,
    message: `the syllabus has no requirement \`${id}\``,
    hint: near
      ? `Write \`${near}\`, or add \`${id}\` to the syllabus.`
      : `Correct the id, or add \`${id}\` to the syllabus.`,
    actual: id,
    ...(near ? {expected: [near]} : {}),
  };
}
