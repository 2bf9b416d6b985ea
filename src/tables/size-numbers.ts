import {type Result, success} from '../support/result.ts';
import {unreadable} from './attribute-readers.ts';

/** One count, or one for each size: `62`, `62 (66, 70)`. */
export function sizeNumbers(text: string): Result<readonly number[]> {
  const {first, others} =
    /^\s*(?<first>\d{1,5})(?:\s*\(\s*(?<others>\d{1,5}(?:\s*[,:]\s*\d{1,5})*)\s*\))?\s*$/.exec(text)
      ?.groups ?? {};
  if (first === undefined) {
    return unreadable(
      `\`${text.trim()}\` is not a count for one size or several`,
      'Write a number, or one for each size, such as `62 (66, 70)`.',
    );
  }
  return success([first, ...(others?.split(/[,:]/) ?? [])].map(Number));
}
