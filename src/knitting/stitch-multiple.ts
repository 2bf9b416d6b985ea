import {failure, type Result, success} from '../support/result.ts';
import {mostCounted} from './cannot-work.ts';

/** `6 + 5`: repeats of `of` stitches and once `plus` stitches over; `plus` may be below zero, as in `6 − 1`. */
export interface StitchMultiple {
  readonly of: number;
  readonly plus: number;
}

export const anyNumber: StitchMultiple = {of: 1, plus: 0};

const written =
  /^\s*(?:multiple of\s+)?(?<of>\d{1,9})\s*(?:(?<sign>plus|minus|[+−-])\s*(?<plus>\d{1,9}))?\s*$/iu;

/** Reads `6 + 5`, `6`, `multiple of 6 plus 5`, `10 - 1`. Never throws. */
export function parseStitchMultiple(text: string): Result<StitchMultiple> {
  const {of = '', sign = '+', plus = '0'} = written.exec(text)?.groups ?? {};
  const value = {of: Number(of), plus: /[−-]|minus/iu.test(sign) ? 0 - Number(plus) : Number(plus)};
  const span = {start: 0, end: text.length};
  if (of === '') {
    return failure({
      message: `\`${text}\` is not a multiple of stitches`,
      hint: 'Write the stitches of one repeat and those over, such as `6 + 5`.',
      span,
    });
  }
  if (value.of === 0 || value.of > mostCounted || Math.abs(value.plus) > mostCounted) {
    return failure({
      message: `a repeat of \`${of}\` stitches and \`${plus}\` over cannot be knitted`,
      hint: `Write a repeat of 1 to ${mostCounted} stitches, such as \`6 + 5\`.`,
      span,
    });
  }
  return success(value);
}

/** `a multiple of 6 + 5`, or `any number` where every count will do. */
export function multipleWords({of, plus}: StitchMultiple): string {
  if (of === 1) return 'any number';
  const over = plus === 0 ? '' : plus > 0 ? ` + ${plus}` : ` \u2212 ${-plus}`;
  return `a multiple of ${of}${over}`;
}
