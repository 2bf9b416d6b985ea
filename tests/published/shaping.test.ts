import {describe, expect, test} from 'vitest';
import {castOnCount} from '../../src/knitting/cast-on-count.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {countOver, gaugeOf} from '../../src/knitting/gauge.ts';
import {pickUpBlocks} from '../../src/knitting/pick-up-blocks.ts';
import {parseGaugeCount, parseLength, parsePutUp} from '../../src/knitting/quantity.ts';
import {nearestDecimalHalfAwayFromZero, nearestWholeHalfUp} from '../../src/knitting/rounding.ts';
import {shoulderSteps} from '../../src/knitting/shoulder-steps.ts';
import {sizeSteps} from '../../src/knitting/size-steps.ts';
import {slope} from '../../src/knitting/slope.ts';
import {nearestSmallFraction} from '../../src/knitting/small-fraction.ts';
import {type Ends, spreadEvenly} from '../../src/knitting/spread-evenly.ts';
import {type SpreadKind, spreadWork, writeSpread} from '../../src/knitting/spread-work.ts';
import {anyNumber, parseStitchMultiple} from '../../src/knitting/stitch-multiple.ts';
import {type Millimetres, millimetres, rows, stitches} from '../../src/knitting/units.ts';
import {areaOf, gramsForArea} from '../../src/knitting/yarn-amount.ts';
import {metricCountOf, texOf} from '../../src/knitting/yarn-count.ts';
// Worked examples from books and blogs of the trade; each names its page in `source`. Where the source is wrong, `status`
// says so and `expected` holds the right figure.
import published from './data/shaping-examples.json' with {type: 'json'};

function example(id: string) {
  const found = published.examples.find((entry) => entry.id === id);
  if (!found) throw new Error(`no published example ${id}`);
  return found.expected;
}

function told<T>(result: {ok: true; value: T} | {ok: false; problems: readonly {message: string}[]}): T {
  if (!result.ok) throw new Error(result.problems[0]?.message);
  return result.value;
}

const length = (text: string): Millimetres => told(parseLength(text)).millimetres;
const gauge = (text: string) => gaugeOf<'stitches'>(told(parseGaugeCount(text)));
const multiple = (text: string) => told(parseStitchMultiple(text));
const inInches = (measure: Fraction) => measure.dividedBy(length('1 in'));
const rounded = (value: Fraction, decimals: number) =>
  nearestDecimalHalfAwayFromZero(value, decimals).toNumber();

function spread(kind: SpreadKind, over: number, places: number, ends: Ends | null, width = 0) {
  const work = spreadWork(kind, width);
  const {needsNeighbours} = work;
  const value = told(spreadEvenly({stitches: stitches(over), places, work, ends, needsNeighbours}));
  return {...value, rows: writeSpread(value, kind, width, ends === null)};
}

const timesOf = (spaces: readonly number[], size: number) => spaces.filter((space) => space === size).length;

describe('spread evenly', () => {
  test('D1: 55 to 38 in the round is every 4th stitch 4 times and every 3rd 13 times', () => {
    const {spaces, result} = spread('decreases', 55, 17, null);
    expect(example('D1')).toMatchObject({
      decreases: 17,
      plan: 'every 4th stitch 4 times, every 3rd stitch 13 times',
    });
    expect([timesOf(spaces, 2), timesOf(spaces, 1), result]).toEqual([4, 13, 38]);
  });

  test('D2: 100 stitches less 16 are k4, k2tog, 16 times, and k4 left', () => {
    expect(example('D2')).toMatchObject({plan: 'k4, k2tog, 16 times, k4 left'});
    expect(spread('decreases', 100, 16, 'whole').rows).toEqual([
      'Dec row (RS): *K4, k2tog; rep from * 15 more times, k4. (84 sts)',
    ]);
  });

  test('D3: 131 to 92 is (k2, k2tog) 14 times and (k1, k2tog) 25 times; the k2, k2tog throughout of the source would need 156 stitches', () => {
    const {spaces, result} = spread('decreases', 131, 39, null);
    expect(example('D3')).toMatchObject({
      decreases: 39,
      plan: '(k2, k2tog) 14 times and (k1, k2tog) 25 times, interleaved',
    });
    expect([timesOf(spaces, 2), timesOf(spaces, 1), result]).toEqual([14, 25, 92]);
  });

  test('I1: 4 increases among 40 stitches leave 5 sections of 8', () => {
    const {section, sections} = example('I1');
    expect(spread('raised increases', 40, 4, 'whole').spaces).toEqual(
      Array.from({length: sections ?? 0}, () => section),
    );
  });

  test('I3: 21 increases among 140 stitches: 6 or 7 between, without the short end of 4 that the source leaves', () => {
    const {spaces, between} = spread('raised increases', 140, 21, 'whole');
    expect(rounded(Fraction.ofRatio(140, 21), 2)).toBe(example('I3').raw);
    expect(between).toEqual({shortest: 6, longest: 7});
    expect(spaces.reduce((sum, space) => sum + space, 0)).toBe(140);
    expect(Math.min(...spaces)).toBe(6);
  });

  test('B1: 7 buttonholes of 4 stitches among 100, 3 at each end, are 11 apart', () => {
    const {spaces, rows: written} = spread('buttonholes', 100, 7, 3, 4);
    const {between, spaces: number} = example('B1');
    expect(spaces).toEqual([3, ...Array.from({length: Number(number)}, () => between), 3]);
    expect(written[0]).toBe(
      'Row 1 (RS): K3, *bind off 4, k11; rep from * 5 more times, bind off 4, k3. (72 sts)',
    );
  });
});

describe('shaping over rows', () => {
  const sloped = (from: number, to: number, height: number, onlyRight = false, edges: 1 | 2 = 2) => {
    const {times, intervals} = told(
      slope({from: stitches(from), to: stitches(to), rows: rows(height), edges, onlyRight}),
    );
    return {times, plan: intervals.map(({every, times: often}) => [every, often])};
  };

  test('R1: 38 to 60 over 108 rows: every 9th row 2 times and every 10th 9 times; on right-side rows every 8th once and every 10th 10 times', () => {
    expect(example('R1')).toMatchObject({shaping_rows: 11, check: '18+90=108'});
    expect(sloped(38, 60, 108)).toEqual({
      times: 11,
      plan: [
        [9, 2],
        [10, 9],
      ],
    });
    expect(sloped(38, 60, 108, true)).toEqual({
      times: 11,
      plan: [
        [8, 1],
        [10, 10],
      ],
    });
  });

  test('R2: 72 to 156 over 176 rows: every 4th row 34 times and every 5th 8 times', () => {
    expect(example('R2')).toMatchObject({per_side: 42, check: '136+40=176'});
    expect(sloped(72, 156, 176)).toEqual({
      times: 42,
      plan: [
        [4, 34],
        [5, 8],
      ],
    });
  });

  test('V1: a V-neck decreased every 2nd row', () => {
    const {decreases, rows: heights} = example('V1');
    const sizes = [
      [19, 12],
      [21, 13],
      [23, 15],
    ] as const;
    expect(sizes.map(([from, to]) => from - to)).toEqual(decreases);
    for (const [index, [from, to]] of sizes.entries()) {
      const height = Array.isArray(heights) ? (heights[index] ?? 0) : 0;
      expect(sloped(from, to, height, false, 1)).toEqual({times: from - to, plan: [[2, from - to]]});
    }
  });

  test('C1: a sleeve cap of 5.5 in at 6.5 rows to the inch is 36 rows with 16 decreases at each side', () => {
    const capRows = countOver(gauge('6.5 rows per in'), millimetres(length('8.5 in').minus(length('3 in'))));
    expect(rounded(capRows, 2)).toBe(example('C1').raw_rows);
    expect(nearestWholeHalfUp(capRows)).toBe(example('C1').rows);
    expect(sloped(66 - 10 - 8, 16, 36).times).toBe(example('C1').per_side);
  });

  test('S1: 103 stitches with 10 bound off at the beginning of 6 rows leave 43 for the neck', () => {
    const {per_shoulder: shoulder = 0, neck} = example('S1');
    const steps = told(shoulderSteps(stitches(shoulder), 3));
    expect(steps).toEqual({steps: [10, 10, 10], rows: 6, unworked: [10, 20, 30]});
    expect(103 - 2 * shoulder).toBe(neck);
  });
});

describe('cast on', () => {
  const castOn = (width: string, at: string, of = anyNumber, selvedges = 0) =>
    told(
      castOnCount({width: length(width), ease: millimetres(0), gauge: gauge(at), multiple: of, selvedges}),
    );

  test('R4: 9 and 13 in at 5.5 to the inch are 50 and 72, halves up', () => {
    const counts = ['9 in', '13 in'].map((width) => castOn(width, '5.5 sts per in'));
    expect(counts.map(({exact}) => exact.toNumber())).toEqual(example('R4').raw);
    expect(counts.map(({chosen}) => chosen.castOn)).toEqual(example('R4').sts);
    expect(counts.every(({isTie}) => isTie)).toBe(true);
  });

  test('O2: 36 stitches wanted of a multiple of 10 + 1 lie half-way between 31 and 41, and both widths are told', () => {
    const {fewer, more, isTie} = castOn('8 in', '4.5 sts per in', multiple('10 + 1'));
    expect([fewer?.castOn, more.castOn]).toEqual(example('O2').candidates);
    expect([fewer, more].map((one) => one && rounded(inInches(one.width), 2))).toEqual([6.89, 9.11]);
    expect(isTie).toBe(true);
  });

  test('O4: 66 stitches of a multiple of 6 and a selvedge stitch at each side are 68', () => {
    expect(castOn('66 mm', '1 per mm', multiple('6'), 2).chosen.castOn).toBe(example('O4').cast_on);
  });
});

describe('picking up', () => {
  test('P1: 20 stitches and 26 rows are 10 in 13: 3 of 4, 3 of 4, 4 of 5', () => {
    const ratio = gauge('20 sts per 4 in').dividedBy(gauge('26 rows per 4 in'));
    expect(`${ratio.numerator}/${ratio.denominator}`).toBe(example('P1').ratio);
    const blocks = pickUpBlocks(Number(ratio.numerator), Number(ratio.denominator));
    expect(blocks.map(({picked, of}) => `${picked} of ${of}`).join(', ')).toBe(example('P1').blocks);
  });

  test('P3: 80 stitches along 102 rows are nearer to 4 of 5 than to 3 of 4', () => {
    const ratio = Fraction.ofRatio(80, 102);
    expect(rounded(ratio, 4)).toBe(example('P3').ratio);
    expect(example('P3').nearest_simple).toMatch(/^4\/5/);
    expect(nearestSmallFraction(ratio, 5)).toEqual(Fraction.ofRatio(4, 5));
  });
});

describe('yarn', () => {
  const piece = (lower: string, upper: string, height: string, times = 1) =>
    areaOf({times, lower: length(lower), upper: length(upper), height: length(height)});
  const squareInch = length('1 in').times(length('1 in'));

  test('Y1 and Y3: a body and two sleeves are 1534 sq in, and 383.5 g by a swatch of 36 sq in and 9 g', () => {
    const [body, sleeve] = [piece('28 in', '28 in', '20 in', 2), piece('8 in', '15 in', '18 in')];
    const total = body.plus(sleeve).plus(sleeve);
    const areas = [body, sleeve, total].map((area) => area.dividedBy(squareInch).toNumber());
    expect({body: areas[0], sleeve: areas[1], total: areas[2]}).toEqual(example('Y1'));
    const grams = gramsForArea(total, piece('6 in', '6 in', '6 in'), Fraction.ofInteger(9));
    expect({grams: grams.toNumber()}).toEqual(example('Y3'));
  });

  // ISO 1144: 1 tex is 1 g in 1000 m, and the metric count Nm is 1000 ÷ tex.
  test.each([
    ['1000 m / 1 g', 1, 1000],
    ['200 m / 100 g', 500, 2],
    ['40 m / 1 g', 25, 40],
  ])('%s is %d tex and Nm %d', (text, tex, metric) => {
    const putUp = told(parsePutUp(text));
    expect([texOf(putUp).toNumber(), metricCountOf(putUp).toNumber()]).toEqual([tex, metric]);
  });
});

test('M1: in four sizes, 19 should be 9, and 37 should be 38', () => {
  expect(example('M1')).toMatchObject({steps: [14, 7, 7, 7]});
  expect(sizeSteps([92, 106, 120, 134])).toEqual({step: 14, odd: null});
  expect(sizeSteps([19, 16, 23, 30])).toEqual({step: 7, odd: {index: 0, count: 19, expected: 9}});
  expect(sizeSteps([13, 20, 27, 34])).toEqual({step: 7, odd: null});
  expect(sizeSteps([17, 24, 31, 37])).toEqual({step: 7, odd: {index: 3, count: 37, expected: 38}});
});

test('every published shaping example is checked here', () => {
  const ids = 'D1 D2 D3 I1 I3 R1 R2 R4 P1 P3 B1 S1 V1 C1 O2 O4 Y1 Y3 M1'.split(' ');
  expect(published.examples.map(({id}) => id)).toEqual(ids);
});
