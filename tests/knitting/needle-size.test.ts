import {describe, expect, test} from 'vitest';
import {Fraction} from '../../src/knitting/fraction.ts';
import {parseNeedleSize} from '../../src/knitting/needle-size.ts';

describe('needle sizes in every way of writing them', () => {
  test.each([
    ['4.5 mm', 18],
    ['4.5mm', 18],
    ['4½ mm', 18],
    ['US 7', 18],
    ['us7', 18],
    ['U.S. 7', 18],
    ['US size 7', 18],
    ['US #7', 18],
    ['US no. 7', 18],
    ['UK 7', 18],
    ['old UK 7', 18],
    ['US 10½', 26],
    ['US 10 1/2', 26],
    ['US 10.5', 26],
    ['UK 000', 40],
    ['UK 0', 32],
    ['size 7', 18],
    ['4.5 mm (US 7)', 18],
    ['US 7 / 4.5 mm', 18],
    ['US 7 = UK 7 = 4.5 mm', 18],
    ['4 mm, circular, 80 cm', 16],
    [' 4 mm ', 16],
  ])('%j is %d quarters of a millimetre', (text, quarters) => {
    const result = parseNeedleSize(text);
    expect(result.ok && result.value.millimetres).toEqual(Fraction.ofRatio(quarters, 4));
    expect(result.ok && result.value.text).toBe(text.trim());
  });
});

describe('what names no needle, or more than one, is said', () => {
  test.each([
    ['7', '7', 'may be `US 7` (4.5 mm), `UK 7` (4.5 mm) or `7 mm`', 'in millimetres, or US or UK'],
    ['size 10', 'size 10', 'may be `US 10` (6 mm), `UK 10` (3.25 mm) or `10 mm`', 'in millimetres'],
    ['4.5', '4.5', 'may be `4.5 mm`', 'in millimetres'],
    ['000', '000', '`US 000` (1.25 mm), `US 000` (1.5 mm) or `UK 000` (10 mm)', 'in millimetres'],
    ['US 2.5', 'US 2.5', '`3 mm` in some published tables and missing from others', 'needle gauge'],
    ['US 17', 'US 17', '`12 mm` or `12.75 mm`: the published tables disagree', 'needle gauge'],
    ['US 12', 'US 12', 'no American needle size', 'needle gauge'],
    ['UK 15', 'UK 15', 'no old British needle size', 'needle gauge'],
    ['4.25 mm', '4.25 mm', 'in no published table', '`4 mm` or `4.5 mm`'],
    ['26 mm', '26 mm', 'in no published table', '`25 mm`'],
    ['4,5 mm', '4,5', 'with a comma', '`4.5`'],
    [
      'US 8 / 4.5 mm',
      '4.5 mm',
      '`US 8` of 5 mm and `4.5 mm` of 4.5 mm are not the same needle',
      'millimetres',
    ],
    ['4.5 mm (US 77)', 'US 77', 'no American needle size', 'millimetres'],
    ['bamboo', 'bamboo', 'not a needle size', '`4.5 mm`'],
    ['4.5 mm circular', '4.5 mm circular', 'not a needle size', 'behind a comma'],
    ['US', 'US', 'not a needle size', '`4.5 mm`'],
    ['99', '99', 'no metric, American or old British needle size', 'millimetres'],
    ['', '', 'empty', '`4.5 mm`'],
    ['()', '()', 'empty', '`4.5 mm`'],
  ])('%j', (text, atFault, fact, remedy) => {
    const result = parseNeedleSize(text);
    const problems = result.ok ? [] : result.problems;
    expect(problems).toHaveLength(1);
    const [problem] = problems;
    expect(text.slice(problem?.span.start, problem?.span.end)).toBe(atFault);
    expect(problem?.message).toContain(fact);
    expect(problem?.hint).toContain(remedy);
  });
});
