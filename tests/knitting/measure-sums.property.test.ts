import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {bodySize, growthOf, growthOfPercent} from '../../src/knitting/body-size.ts';
import {castOnCount} from '../../src/knitting/cast-on-count.ts';
import {Fraction} from '../../src/knitting/fraction.ts';
import {gaugeOf, lengthOf, summarizeGauge} from '../../src/knitting/gauge.ts';
import {pickUp} from '../../src/knitting/pick-up.ts';
import {pickUpBlocks} from '../../src/knitting/pick-up-blocks.ts';
import {
  nearestWholeHalfUp,
  squareRootNotAbove,
  squareRootToThousandths,
  wholeNotAbove,
  wholeNotBelow,
} from '../../src/knitting/rounding.ts';
import {sizeSteps} from '../../src/knitting/size-steps.ts';
import {nearestSmallFraction} from '../../src/knitting/small-fraction.ts';
import {anyNumber, parseStitchMultiple} from '../../src/knitting/stitch-multiple.ts';
import {spreadOver, spreadOverBoth} from '../../src/knitting/uncertainty.ts';
import {millimetres, stitches} from '../../src/knitting/units.ts';
import {widthMatch} from '../../src/knitting/width-match.ts';
import {gaugeCount, gaugeCounts} from './arbitraries.ts';

const one = Fraction.one;
const length = fc.integer({min: 1, max: 3000}).map((halves) => millimetres(Fraction.ofRatio(halves, 2)));
const multiple = fc.record({of: fc.integer({min: 1, max: 24}), plus: fc.integer({min: -5, max: 12})});
const sensibleGauge = fc.integer({min: 20, max: 160}).map((quarters) =>
  gaugeOf<'stitches'>({
    count: Fraction.ofRatio(quarters, 4),
    over: {millimetres: millimetres(100), unit: 'cm', text: ''},
    text: '',
  }),
);

describe('roundings', () => {
  const fraction = fc
    .tuple(fc.integer({min: -100000, max: 100000}), fc.integer({min: 1, max: 999}))
    .map(([over, under]) => Fraction.ofRatio(over, under));

  test('whole not above ≤ value ≤ whole not below, both within one', () => {
    fc.assert(
      fc.property(fraction, (value) => {
        expect(wholeNotAbove(value)).toBe(Math.floor(value.toNumber()));
        expect(wholeNotBelow(value) - wholeNotAbove(value)).toBe(value.isWhole() ? 0 : 1);
        expect(Fraction.ofInteger(wholeNotBelow(value)).compare(value)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('the nearest whole is within a half, and a half goes up', () => {
    fc.assert(
      fc.property(fraction, (value) => {
        const off = Fraction.ofInteger(nearestWholeHalfUp(value)).minus(value);
        expect(off.compare(Fraction.ofRatio(1, 2))).toBeLessThanOrEqual(0);
        expect(off.compare(Fraction.ofRatio(-1, 2))).toBeGreaterThan(0);
      }),
    );
  });

  test('a whole square root is the greatest whose square is not above, for any size of number', () => {
    fc.assert(
      fc.property(fc.bigInt({min: 0n, max: 10n ** 40n}), (square) => {
        const root = squareRootNotAbove(square);
        expect(root * root <= square).toBe(true);
        expect((root + 1n) * (root + 1n) > square).toBe(true);
      }),
    );
  });

  test('a root to thousandths squares back to within its last place', () => {
    fc.assert(
      fc.property(length, (side) => {
        expect(squareRootToThousandths(side.times(side))).toEqual(side);
      }),
    );
  });
});

describe('cast on', () => {
  const request = fc.record({
    width: length,
    ease: fc.integer({min: -50, max: 200}).map((tenths) => millimetres(Fraction.ofRatio(tenths, 10))),
    gauge: sensibleGauge,
    multiple,
    selvedges: fc.nat({max: 4}),
  });

  test('both neighbours are of the multiple and one repeat apart, the exact number lies between, and the nearer is chosen', () => {
    fc.assert(
      fc.property(request, (asked) => {
        const result = castOnCount(asked);
        if (!result.ok) {
          expect(asked.width.plus(asked.ease).compare(Fraction.zero)).toBeLessThanOrEqual(0);
          return;
        }
        const {exact, fewer, more, chosen, isTie} = result.value;
        const candidates = [fewer, more].flatMap((candidate) => candidate ?? []);
        for (const {pattern, castOn, width} of candidates) {
          expect((pattern - asked.multiple.plus) % asked.multiple.of).toBe(0);
          expect(castOn - pattern).toBe(asked.selvedges);
          expect(width).toEqual(lengthOf(pattern, asked.gauge));
        }
        expect(exact.compare(Fraction.ofInteger(more.pattern)) <= 0).toBe(true);
        if (fewer) {
          expect(exact.compare(Fraction.ofInteger(fewer.pattern)) >= 0).toBe(true);
          expect([0, asked.multiple.of]).toContain(more.pattern - fewer.pattern);
          for (const {off} of candidates)
            expect(chosen.off.absolute().compare(off.absolute())).toBeLessThanOrEqual(0);
          if (isTie) expect(chosen).toEqual(more);
        } else expect(more.pattern).toBeGreaterThan(0);
      }),
    );
  });
});

test('a multiple reads back as it was written', () => {
  fc.assert(
    fc.property(multiple, ({of, plus}) => {
      const sign = plus < 0 ? '−' : '+';
      expect(parseStitchMultiple(`${of} ${sign} ${Math.abs(plus)}`)).toMatchObject({
        ok: true,
        value: {of, plus},
      });
      expect(parseStitchMultiple(`multiple of ${of}`)).toMatchObject({ok: true, value: {of, plus: 0}});
    }),
  );
});

test('a multiple that cannot be knitted is refused', () => {
  for (const text of ['', '0 + 5', 'six', '6 + ', '6 * 5', '999999 + 1']) {
    expect(parseStitchMultiple(text).ok, text).toBe(false);
  }
});

describe('what the spread does', () => {
  test('the mean lies within the spread, and the result at every place counted too', () => {
    fc.assert(
      fc.property(gaugeCounts, fc.integer({min: 1, max: 500}), (counts, many) => {
        const gauge = summarizeGauge<'stitches'>(counts);
        const spread = spreadOver(gauge, (at) => lengthOf(stitches(many), at));
        for (const place of [gauge.mean, ...gauge.places]) {
          const width = lengthOf(stitches(many), place);
          expect(spread.least.compare(width)).toBeLessThanOrEqual(0);
          expect(spread.most.compare(width)).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test('of two gauges, the ratio at any pair of places lies within', () => {
    fc.assert(
      fc.property(gaugeCounts, gaugeCounts, (some, others) => {
        const [a, b] = [summarizeGauge<'stitches'>(some), summarizeGauge<'rows'>(others)];
        const spread = spreadOverBoth(a, b, (across, up) => across.dividedBy(up));
        for (const across of a.places) {
          for (const up of b.places) {
            expect(spread.least.compare(across.dividedBy(up))).toBeLessThanOrEqual(0);
            expect(spread.most.compare(across.dividedBy(up))).toBeGreaterThanOrEqual(0);
          }
        }
      }),
    );
  });

  test('one count has no spread', () => {
    fc.assert(
      fc.property(gaugeCount, (taken) => {
        const spread = spreadOver(summarizeGauge<'stitches'>([taken]), (at) => at);
        expect([spread.least, spread.most]).toEqual([spread.mean, spread.mean]);
      }),
    );
  });
});

describe('picking up', () => {
  const places = fc.integer({min: 1, max: 200});

  test('blocks add up on both sides and no two differ by more than one place', () => {
    fc.assert(
      fc.property(places, places, (picked, of) => {
        const blocks = pickUpBlocks(picked, of);
        expect(blocks.reduce((sum, block) => sum + block.picked, 0)).toBe(picked);
        expect(blocks.reduce((sum, block) => sum + block.of, 0)).toBe(of);
        for (const side of ['picked', 'of'] as const) {
          const sizes = blocks.map((block) => block[side]);
          expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test('the parts of an edge share the whole count, each within a stitch of its own length', () => {
    fc.assert(
      fc.property(
        sensibleGauge,
        sensibleGauge,
        sensibleGauge,
        places,
        places,
        places,
        (across, up, band, a, b, c) => {
          const edge = [
            {kind: 'bound-off stitches', places: a, slant: 0},
            {kind: 'slanting rows', places: b, slant: Math.ceil(b / 2)},
            {kind: 'rows', places: c, slant: 0},
          ] as const;
          // The gauges of rows and stitches are the same numbers with another brand.
          const rowGauge = gaugeOf<'rows'>({
            count: up,
            over: {millimetres: millimetres(1), unit: 'mm', text: ''},
            text: '',
          });
          const result = pickUp(edge, {stitches: across, rows: rowGauge}, band, anyNumber);
          if (!result.ok) return;
          const {parts, total} = result.value;
          expect(parts.reduce((sum, part) => sum + part.picked, 0)).toBe(total.chosen.castOn);
          for (const part of parts) {
            expect(Math.abs(part.exact.toNumber() - part.picked)).toBeLessThan(2);
            expect(part.blocks.reduce((sum, block) => sum + block.of, 0)).toBe(part.places);
          }
        },
      ),
    );
  });
});

test('no fraction with as small a denominator is nearer than the nearest small fraction', () => {
  fc.assert(
    fc.property(
      fc.integer({min: 1, max: 300}),
      fc.integer({min: 1, max: 300}),
      fc.integer({min: 1, max: 13}),
      (a, b, most) => {
        const value = Fraction.ofRatio(a, b);
        const off = (candidate: Fraction) => candidate.minus(value).absolute();
        const best = nearestSmallFraction(value, most);
        expect(best.denominator <= BigInt(most)).toBe(true);
        for (let under = 1; under <= most; under++) {
          for (const over of [Math.floor((a * under) / b), Math.ceil((a * under) / b)]) {
            expect(off(best).compare(off(Fraction.ofRatio(over, under)))).toBeLessThanOrEqual(0);
          }
        }
      },
    ),
  );
});

test('plain stitches under cables are as wide as the panel to half a stitch', () => {
  fc.assert(
    fc.property(fc.integer({min: 1, max: 400}), sensibleGauge, sensibleGauge, (panel, cables, plain) => {
      const result = widthMatch(stitches(panel), cables, plain);
      if (!result.ok) return;
      const halfStitch = one.dividedBy(plain).dividedBy(Fraction.ofInteger(2));
      expect(result.value.off.absolute().compare(halfStitch)).toBeLessThanOrEqual(0);
      expect(result.value.plain + result.value.change).toBe(panel);
    }),
  );
});

test('what is knitted, blocked, is body and ease exactly', () => {
  const percent = fc.integer({min: -99, max: 200}).map((whole) => Fraction.ofInteger(whole));
  fc.assert(
    fc.property(length, length, percent, (body, ease, change) => {
      const growth = growthOfPercent(change);
      const result = bodySize(body, ease, growth);
      if (!result.ok) throw new Error('it can be knitted');
      expect(result.value.knitted.times(growth)).toEqual(body.plus(ease));
    }),
  );
});

test('the growth that two gauges show is the growth of any number of stitches', () => {
  fc.assert(
    fc.property(sensibleGauge, sensibleGauge, fc.integer({min: 1, max: 300}), (before, after, many) => {
      const grown = lengthOf(stitches(many), before).times(growthOf(before, after));
      expect(grown).toEqual(lengthOf(stitches(many), after));
    }),
  );
});

test('one count out of step is found, and the step of the others', () => {
  const sizes = fc.record({
    start: fc.integer({min: 0, max: 200}),
    step: fc.integer({min: 1, max: 20}),
    many: fc.integer({min: 4, max: 9}),
    odd: fc.nat(),
    by: fc.integer({min: 1, max: 30}),
  });
  fc.assert(
    fc.property(sizes, ({start, step, many, odd, by}) => {
      const counts = Array.from({length: many}, (_, size) => start + size * step);
      expect(sizeSteps(counts)).toEqual({step, odd: null});
      const index = odd % many;
      const wrong = counts.map((value, size) => (size === index ? value + by : value));
      expect(sizeSteps(wrong)).toEqual({step, odd: {index, count: wrong[index], expected: counts[index]}});
    }),
  );
});
