import {describe, expect, test} from 'vitest';
import {parseNeedleSize} from '../../src/knitting/needle-size.ts';
import {disputedUsSizes} from '../../src/knitting/needle-size-table.ts';
// Eight public conversion tables, compared; where they disagree the row says so.
import published from './data/needle-sizes.json' with {type: 'json'};

function read(text: string) {
  const result = parseNeedleSize(text);
  if (!result.ok) return {problem: result.problems.map(({message}) => message).join('; ')};
  const {millimetres, us, uk} = result.value;
  return {mm: millimetres.toNumber(), us, uk};
}

const agreed = published.rows.filter(({agreement}) => agreement === 'all tables seen agree');
const disputed = published.rows.filter(({agreement}) => agreement !== 'all tables seen agree');

describe('from millimetres to the numbers', () => {
  test.each(published.rows)('$mm mm', ({mm, us, uk_old: uk}) => {
    expect(read(`${mm} mm`)).toEqual({mm, us, uk});
  });
});

describe('from the numbers to millimetres', () => {
  test.each(agreed.filter(({us}) => us !== null))('US $us', ({mm, us, uk_old: uk}) => {
    expect(read(`US ${us}`)).toEqual({mm, us, uk});
  });

  test.each(published.rows.filter(({uk_old}) => uk_old !== null))('UK $uk_old', ({mm, us, uk_old: uk}) => {
    expect(read(`UK ${uk}`)).toEqual({mm, us, uk});
  });
});

describe('where the tables disagree the millimetres are asked for', () => {
  test.each(disputed)('$mm mm: $agreement', ({mm, us, agreement}) => {
    const claimed = us ?? /US ([\d.]+) in some tables/.exec(agreement)?.[1];
    expect(read(`US ${claimed}`).problem).toContain(`\`${mm} mm\``);
  });

  test.each(published.conflicting_small_sizes)('$mm mm as $us_claims', ({mm, us_claims}) => {
    for (const claim of us_claims) expect(read(`US ${claim}`).problem).toContain(`\`${mm} mm\``);
    expect(read(`${mm} mm`)).toMatchObject({mm});
  });

  test.each(
    disputed.flatMap(({agreement}) => [...agreement.matchAll(/([\d.]+) mm/g)].map(([, mm]) => Number(mm))),
  )('a needle of %d mm is sold, whatever its number', (mm) => {
    expect(read(`${mm} mm`)).toMatchObject({mm});
  });

  test('every disputed number comes from a row that names a disagreement', () => {
    const named = [...disputed.map(({us, agreement}) => `${us} ${agreement}`)].join(' ');
    const small = published.conflicting_small_sizes.flatMap(({us_claims}) => us_claims);
    for (const us of disputedUsSizes.keys()) expect(small.includes(us) || named.includes(us), us).toBe(true);
  });
});

describe('conversions that are often got wrong', () => {
  const cases = published.must_not_convert.filter(({right}) => right !== undefined);
  test.each(cases)('$input is $right and not $wrong', ({input, right}) => {
    const [from = '', to] = input.split(' -> ');
    const found = read(from);
    expect(to === 'UK' ? found.uk : found.mm).toBe(to === 'UK' ? right : Number(right));
  });

  test('a bare size 10 asks which system; a bare size 7 is the one where both agree', () => {
    expect(read('size 10').problem).toMatch(/US 10.*6 mm.*UK 10.*3\.25 mm/);
    expect(read('size 7')).toEqual({mm: 4.5, us: '7', uk: '7'});
  });
});
