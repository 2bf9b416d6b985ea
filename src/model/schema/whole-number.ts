import * as z from 'zod';

/**
 * A whole number from `least` on, to `most` if there is an end. Digits with a zero before them come as text, so that a
 * field of text keeps it; here `01` is 1.
 */
export function wholeNumberSchema(least: number, most = Number.MAX_SAFE_INTEGER) {
  const number = z.number().int().min(least).max(most);
  return z.preprocess(
    (written) => (typeof written === 'string' && /^0\d+$/.test(written) ? Number(written) : written),
    number,
  );
}
