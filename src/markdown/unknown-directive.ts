import type {ReadingFault} from '../model/reading-rules.ts';
import {nearestName} from '../support/nearest-name.ts';

/** `known` are the names of the computed tables, as far as they are known. */
export function unknownDirective(name: string, known: Iterable<string> = []): Omit<ReadingFault, 'place'> {
  const near = nearestName(name, known);
  return {
    rule: 'unknown-directive',
    message: `\`${name}\` is not something that can be computed here`,
    hint: near
      ? `Write \`::${near}\`, or take the line out.`
      : 'Take the line out, or write the name of a computed table, such as `::gauge`.',
    ...(near ? {expected: [near]} : {}),
  };
}
