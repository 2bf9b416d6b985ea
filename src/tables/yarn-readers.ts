import {Fraction} from '../knitting/fraction.ts';
import {type PutUp, parseLength, parsePutUp} from '../knitting/quantity.ts';
import {readMeasure} from '../knitting/read-measure.ts';
import type {Millimetres} from '../knitting/units.ts';
import type {ColourShare, PieceShape} from '../knitting/yarn-amount.ts';
import {type Result, success} from '../support/result.ts';
import {count, percent, unreadable} from './attribute-readers.ts';

const piecesHint =
  'Write how many, the width, and the height, such as `2 of 50 cm x 56 cm`; two widths for a sleeve, `2 of 20 cm to 38 cm x 45 cm`; pieces apart by `;`.';

/** `2 of 28 in x 20 in; 2 of 8 in to 15 in x 18 in`: how many, the lower and upper width, the height. */
export function pieces(text: string): Result<readonly PieceShape[]> {
  const shapes: PieceShape[] = [];
  for (const written of text.split(';')) {
    const {
      times = '1',
      lower = '',
      upper = lower,
      height = '',
    } = /^\s*(?:(?<times>\d+)\s+of\s+)?(?<lower>.+?)(?:\s+to\s+(?<upper>.+?))?\s*[x×]\s*(?<height>.+?)\s*$/i.exec(
      written,
    )?.groups ?? {};
    if (height === '') return unreadable(`\`${written.trim()}\` is not the size of a piece`, piecesHint);
    const number = count(times);
    if (!number.ok) return number;
    const [low, up, high] = [aboveZero(lower), aboveZero(upper), aboveZero(height)];
    if (!low.ok) return low;
    if (!up.ok) return up;
    if (!high.ok) return high;
    if (number.value === 0) return unreadable(`\`${written.trim()}\` is no piece at all`, piecesHint);
    shapes.push({times: number.value, lower: low.value, upper: up.value, height: high.value});
  }
  return success(shapes);
}

/** `15 cm x 15 cm`. */
export function swatchSize(text: string): Result<PieceShape> {
  const shapes = pieces(text);
  if (!shapes.ok) return shapes;
  const [shape] = shapes.value;
  return shape && shapes.value.length === 1 && shape.times === 1
    ? success(shape)
    : unreadable(
        `\`${text}\` is more than one swatch`,
        'Write width and height of one swatch, such as `15 cm x 15 cm`.',
      );
}

/** `9 g`, `0.5 oz`: grams, above zero. */
export function mass(text: string): Result<Fraction> {
  const trimmed = text.trim();
  const measure = readMeasure(trimmed, 0);
  if (!measure.ok) return measure;
  const {dimension, amount, end} = measure.value;
  const isMass = dimension === 'mass' && end === trimmed.length && !amount.equals(Fraction.zero);
  return isMass
    ? success(amount)
    : unreadable(`\`${text}\` is not a weight`, 'Write the weight, such as `9 g`.');
}

/** `100 sts from 1.9 m`: how many stitches were unravelled, and how long their yarn is. */
export function unravelled(text: string): Result<{readonly stitches: number; readonly length: Millimetres}> {
  const {sts = '', long = ''} =
    /^\s*(?<sts>\d+)\s*(?:sts?|stitch(?:es)?)\.?\s+(?:from|in|=)\s+(?<long>.+)$/i.exec(text)?.groups ?? {};
  const number = sts === '' ? null : count(sts);
  if (number && !number.ok) return number;
  if (!number || number.value === 0) {
    return unreadable(
      `\`${text}\` does not say how long the yarn of how many stitches is`,
      'Write it as `100 sts from 1.9 m`.',
    );
  }
  const length = aboveZero(long);
  return length.ok ? success({stitches: number.value, length: length.value}) : length;
}

/** `oatmeal 60 %, rust 40 %`. */
export function colours(text: string): Result<readonly ColourShare[]> {
  const shares: ColourShare[] = [];
  for (const written of text.split(/[,;]\s*/)) {
    const {colour = '', share = ''} =
      /^\s*(?<colour>.*\p{L})\s+(?<share>[\d.½¼¾ /]+\s*%?)\s*$/u.exec(written)?.groups ?? {};
    if (colour === '')
      return unreadable(
        `\`${written}\` is not a colour with its share`,
        'Write each colour and its share, such as `oatmeal 60 %, rust 40 %`.',
      );
    const part = percent(share);
    if (!part.ok) return part;
    shares.push({colour, percent: part.value});
  }
  return success(shares);
}

export function putUp(text: string): Result<PutUp> {
  return parsePutUp(text);
}

function aboveZero(text: string): Result<Millimetres> {
  const length = parseLength(text);
  if (!length.ok) return length;
  return length.value.millimetres.equals(Fraction.zero)
    ? unreadable(`\`${text}\` is zero`, 'Write what was measured.')
    : success(length.value.millimetres);
}
