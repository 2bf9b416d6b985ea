import fc from 'fast-check';
import {crossingOfWidth, leftTwist, makeCrossing, rightTwist} from '../../../src/knitting/rows/crossings.ts';
import {readRows} from '../../../src/knitting/rows/read-rows.ts';
import type {Extent, Sized, Step, WrittenPattern} from '../../../src/knitting/rows/row-syntax.ts';
import type {Stitch} from '../../../src/knitting/rows/stitch.ts';
import {makeTogether} from '../../../src/knitting/rows/stitch-makers.ts';
import * as stitches from '../../../src/knitting/rows/stitches.ts';

const span = {start: 0, end: 0};
const isStitch = (value: unknown): value is Stitch =>
  typeof value === 'object' && value !== null && 'mustBeDefined' in value && !value.mustBeDefined;

/** Every stitch with a meaning of its own, and some of each family. */
export const everyStitch: readonly Stitch[] = [
  ...Object.values(stitches).filter(isStitch),
  rightTwist,
  leftTwist,
  ...[2, 3, 5].flatMap((from) =>
    (['knit', 'purl'] as const).flatMap((surface) => [
      makeTogether(surface, from, false),
      makeTogether(surface, from, true),
    ]),
  ),
  ...(['right', 'left'] as const).flatMap((direction) =>
    [
      makeCrossing([2, 2], direction, false),
      makeCrossing([2, 1], direction, true),
      makeCrossing([1, 2], direction, false),
      makeCrossing([2, 1, 2], direction, true),
      crossingOfWidth(6, direction, 'C'),
      crossingOfWidth(4, direction, 'Cr'),
    ].filter(isStitch),
  ),
];

const count: fc.Arbitrary<Sized> = fc.integer({min: 1, max: 9}).map((value) => ({values: [value], span}));
const sized: fc.Arbitrary<Sized> = fc.oneof(
  {weight: 4, arbitrary: count},
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.integer({min: 1, max: 9}), fc.integer({min: 1, max: 9}))
      .map((values) => ({values, span})),
  },
);
const times: fc.Arbitrary<Extent> = sized.map((value) => ({kind: 'times', count: value}));
const anyExtent: fc.Arbitrary<Extent> = fc.oneof(
  times,
  fc.constant<Extent>({kind: 'to end'}),
  sized.map((value): Extent => ({kind: 'to last', count: value})),
  fc.constant<Extent>({kind: 'to landmark', landmark: 'marker', name: null, before: null, past: null}),
  sized.map((before): Extent => ({kind: 'to landmark', landmark: 'marker', name: null, before, past: null})),
);
const starExtent: fc.Arbitrary<Extent> = fc.oneof(
  fc.constant<Extent>({kind: 'as fits'}),
  fc.constant<Extent>({kind: 'to end'}),
  sized.map((value): Extent => ({kind: 'to last', count: value})),
  sized.map((value): Extent => ({kind: 'more', count: value, isPlain: false})),
);

function workOf(extent: fc.Arbitrary<Extent>): fc.Arbitrary<Step> {
  return fc
    .tuple(fc.constantFrom(...everyStitch), extent, fc.constantFrom(null, 'front' as const, 'back' as const))
    .map(
      ([stitch, how, yarn]): Step => ({
        kind: 'work',
        stitch,
        extent: how,
        yarn: stitch.kind === 'slip' && stitch !== stitches.doubleStitch ? yarn : null,
        isDoubtful: false,
        span,
      }),
    );
}

const single: fc.Arbitrary<Step> = fc.constantFrom(stitches.knit, stitches.purl, stitches.yarnOver).map(
  (stitch): Step => ({
    kind: 'work',
    stitch,
    extent: {kind: 'times', count: {values: [1], span}},
    yarn: null,
    isDoubtful: false,
    span,
  }),
);
const into: fc.Arbitrary<Step> = fc
  .tuple(fc.array(single, {minLength: 2, maxLength: 5}), fc.integer({min: 1, max: 3}))
  .map(([steps, uses]): Step => ({kind: 'into', steps, uses, span}));

/** Passages whose use does not depend on the place. */
const fixedStep: fc.Arbitrary<Step> = fc.oneof(
  {weight: 6, arbitrary: workOf(times)},
  {weight: 1, arbitrary: into},
  {weight: 1, arbitrary: sized.map((value): Step => ({kind: 'cast on', how: 'cast on', count: value, span}))},
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.array(workOf(times), {minLength: 2, maxLength: 4}), times)
      .map(([steps, extent]): Step => ({kind: 'repeat', style: 'bracket', steps, extent, span})),
  },
);

const anyStep: fc.Arbitrary<Step> = fc.oneof(
  {weight: 4, arbitrary: fixedStep},
  {weight: 2, arbitrary: workOf(anyExtent)},
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.array(fixedStep, {minLength: 1, maxLength: 4}), starExtent)
      .map(([steps, extent]): Step => ({kind: 'repeat', style: 'star', steps, extent, span})),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom<Step>(
      {kind: 'marker', action: 'place', name: null, span},
      {kind: 'marker', action: 'slip', name: null, span},
      {kind: 'marker', action: 'remove', name: null, span},
      {kind: 'turn', how: 'plain', span},
      {kind: 'turn', how: 'wrapped', span},
      {kind: 'yarn', to: 'back', span},
      {kind: 'yarn', to: 'front', span},
    ),
  },
  {weight: 1, arbitrary: times.map((extent): Step => ({kind: 'bind off', extent, span}))},
);

/** Rows of any steps, whether they come out or not. */
export const anySteps: fc.Arbitrary<readonly Step[]> = fc.array(anyStep, {minLength: 1, maxLength: 8});

/** A lead, a repeat and a tail of fixed steps. */
export const laceRow: fc.Arbitrary<readonly Step[]> = fc
  .tuple(
    fc.array(fixedStep, {maxLength: 4}),
    fc.array(fixedStep, {minLength: 1, maxLength: 4}),
    fc.array(fixedStep, {maxLength: 4}),
  )
  .map(([lead, repeat, tail]): readonly Step[] => [
    ...lead,
    {kind: 'repeat', style: 'star', steps: repeat, extent: {kind: 'as fits'}, span},
    ...tail,
  ]);

/** A pattern of one row with these steps, on so many stitches in each of two sizes. */
export function patternOf(steps: readonly Step[], start: number): WrittenPattern {
  const {pattern} = readRows(`stitches: ${start} (${start})\nRow 1: k1.`);
  return {
    ...pattern,
    entries: pattern.entries.map((entry) => (entry.kind === 'row' ? {...entry, steps} : entry)),
  };
}

/** The same without places, so that a pattern can be compared with what was read from its text. */
export function withoutPlaces(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value, (key, part) => (key === 'span' ? undefined : part)));
}
