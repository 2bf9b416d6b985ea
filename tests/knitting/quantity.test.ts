import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {parseGaugeCount, parseLength, parsePutUp} from '../../src/knitting/quantity.ts';
import type {Result} from '../../src/support/result.ts';

const tenths = (value: number) => Fraction.ofRatio(value, 10);

describe('lengths', () => {
  test.each([
    ['10.2 cm', tenths(1020), 'cm'],
    ['105 mm', tenths(1050), 'mm'],
    ['105mm', tenths(1050), 'mm'],
    ['1.5 m', tenths(15000), 'm'],
    ['2 metres', tenths(20000), 'm'],
    ['4 in', tenths(1016), 'in'],
    ['4"', tenths(1016), 'in'],
    ['4″', tenths(1016), 'in'],
    ['4”', tenths(1016), 'in'],
    ["4''", tenths(1016), 'in'],
    ['4 inches', tenths(1016), 'in'],
    ['1 inch', tenths(254), 'in'],
    ['4 IN.', tenths(1016), 'in'],
    ['10½ in', tenths(2667), 'in'],
    ['10 ½ in', tenths(2667), 'in'],
    ['10 1/2 in', tenths(2667), 'in'],
    ['10-1/2 in', tenths(2667), 'in'],
    ['10\u00a01/2\u00a0in', tenths(2667), 'in'],
    ['10 1⁄2 in', tenths(2667), 'in'],
    ['1/2 in', tenths(127), 'in'],
    ['½″', tenths(127), 'in'],
    ['.5 in', tenths(127), 'in'],
    ['⅛ in', Fraction.ofRatio(254, 80), 'in'],
    ['1 yd', tenths(9144), 'yd'],
    ['0 mm', Fraction.zero, 'mm'],
    ['  10 cm ', tenths(1000), 'cm'],
  ] as const)('%j', (text, millimetres, unit) => {
    const result = parseLength(text);
    expect(result.ok && result.value.millimetres).toEqual(millimetres);
    expect(result.ok && result.value.unit).toBe(unit);
    expect(result.ok && result.value.text).toBe(text.trim());
  });
});

// Unicode's compatibility decomposition (NFKC) of `⅝` is `5⁄8`: the character table is checked against the standard's.
test.each([...'½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'])('the character %s means what Unicode says', (character) => {
  const [short, long] = [character, character.normalize('NFKC')].map((text) => parseLength(`${text} in`));
  expect(long?.ok && long.value.millimetres).toBeInstanceOf(Fraction);
  expect(short?.ok && short.value.millimetres).toEqual(long?.ok && long.value.millimetres);
});

describe('gauge counts', () => {
  test.each([
    ['20.5 over 10 cm', Fraction.ofRatio(41, 2), tenths(1000)],
    ['22 over 4 in', Fraction.ofInteger(22), tenths(1016)],
    ['20½ over 10 cm', Fraction.ofRatio(41, 2), tenths(1000)],
    ['20 1/2 sts over 10 cm', Fraction.ofRatio(41, 2), tenths(1000)],
    ['20 stitches over 10 cm', Fraction.ofInteger(20), tenths(1000)],
    ['28 rows over 10 cm', Fraction.ofInteger(28), tenths(1000)],
    ['28 rounds per 10 cm', Fraction.ofInteger(28), tenths(1000)],
    ['22 sts to 4"', Fraction.ofInteger(22), tenths(1016)],
    ['18 sts / 4 in', Fraction.ofInteger(18), tenths(1016)],
    ['5.25 sts per inch', Fraction.ofRatio(21, 4), tenths(254)],
    ['20over10cm', Fraction.ofInteger(20), tenths(1000)],
  ] as const)('%j', (text, count, millimetres) => {
    const result = parseGaugeCount(text);
    expect(result.ok && result.value.count).toEqual(count);
    expect(result.ok && result.value.over.millimetres).toEqual(millimetres);
    expect(result.ok && result.value.text).toBe(text);
  });
});

describe('put-ups', () => {
  test.each([
    ['200 m / 100 g', Fraction.ofInteger(200_000), Fraction.ofInteger(100)],
    ['200m/100g', Fraction.ofInteger(200_000), Fraction.ofInteger(100)],
    ['183 m per 50 g', Fraction.ofInteger(183_000), Fraction.ofInteger(50)],
    ['2000 m / 1 kg', Fraction.ofInteger(2_000_000), Fraction.ofInteger(1000)],
    ['50 g = 120 m', Fraction.ofInteger(120_000), Fraction.ofInteger(50)],
    // 1 yd = 0.9144 m and 1 oz = 28.349523125 g exactly: international yard and pound agreement, 1959.
    ['220 yd / 3.5 oz', tenths(220 * 9144), Fraction.ofRatio(28_349_523_125 * 7, 2_000_000_000)],
  ] as const)('%j', (text, millimetres, grams) => {
    const result = parsePutUp(text);
    expect(result.ok && result.value.length.millimetres).toEqual(millimetres);
    expect(result.ok && result.value.grams).toEqual(grams);
  });
});

describe('what cannot be read is said, with the part at fault and what to write instead', () => {
  test.each([
    [parseLength, '10,2 cm', '10,2', 'with a comma', '`10.2`'],
    [parseLength, '10.2', '10.2', 'has no unit', '`10.2 cm`'],
    [parseLength, '5 feet', 'feet', 'not a unit', 'in or yd'],
    [parseLength, '10 cn', 'cn', 'not a unit', '`cm`'],
    [parseLength, '1/0 in', '1/0', 'divides by zero', '`1/2`'],
    [parseLength, '-3 cm', '-3', 'where a number should be', '`20.5`'],
    [parseLength, '1.5.2 cm', '1.5.2', 'where a number should be', '`20.5`'],
    [parseLength, '10.2 cm wide', 'wide', 'more text', '`10.2 cm`'],
    [parseLength, '12 g', '12 g', 'a weight where a length', '`10.2 cm`'],
    [parseLength, '1234567890 cm', '1234567890', 'more than 9 digits', '`20.5`'],
    [parseLength, '', '', 'number is missing', '`20`'],
    [parseGaugeCount, 'twenty over 10 cm', 'twenty', 'where a number should be', '`20.5`'],
    [parseGaugeCount, '22', '22', 'over which length', '`20.5 over 10 cm`'],
    [parseGaugeCount, '22 sts 4 in', 'sts 4 in', 'over which length', '`20.5 over 10 cm`'],
    [parseGaugeCount, '22/4 in', 'in', 'over which length', '`20.5 over 10 cm`'],
    [parseGaugeCount, '20 over', '', 'number is missing', '`20`'],
    [parseGaugeCount, '20 over 10', '10', 'has no unit', '`10 cm`'],
    [parseGaugeCount, '20 over 10,5 cm', '10,5', 'with a comma', '`10.5`'],
    [parseGaugeCount, '0 over 10 cm', '0', 'is zero', 'counted'],
    [parseGaugeCount, '20 over 0 cm', '0 cm', 'is zero', 'counted'],
    [parseGaugeCount, '20 over 100 g', '100 g', 'a weight where a length', '`10.2 cm`'],
    [parseGaugeCount, '20 over 10 cm twice', 'twice', 'more text', '`20.5 over 10 cm`'],
    [parsePutUp, '200 m', '200 m', 'no `/`', '`200 m / 100 g`'],
    [parsePutUp, '200 m / 100 m', '100 m', 'is a length', '`200 m / 100 g`'],
    [parsePutUp, '100 g / 50 g', '50 g', 'a weight where a length', '`10.2 cm`'],
    [parsePutUp, '0 m / 50 g', '0 m', 'is zero', 'measured'],
  ] as [(text: string) => Result<unknown>, string, string, string, string][])(
    '%# %j',
    (parse, text, atFault, fact, remedy) => {
      const result = parse(text);
      const problems = result.ok ? [] : result.problems;
      expect(problems).toHaveLength(1);
      const [problem] = problems;
      expect(text.slice(problem?.span.start, problem?.span.end)).toBe(atFault);
      expect(problem?.message).toContain(fact);
      expect(problem?.hint).toContain(remedy);
    },
  );
});
