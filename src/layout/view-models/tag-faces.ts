import type {Item} from '../../model/binder.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import type {Rectangle} from '../tab-place.ts';
import {fromBehind, lowerHalf, upperHalf} from '../tag-drawing.ts';
import type {TagGrid} from '../tag-grid.ts';
import {type Fact, yarnInShort} from './facts.ts';
import {firstLeaf} from './leaf-reference.ts';
import {edgesInShort, finalMeasurement} from './measured-in-short.ts';
import {latestRework} from './rework-round.ts';

/** The front or the reverse of one tag. */
export interface TagFace {
  readonly place: Rectangle;
  readonly isReverse: boolean;
  /** Printed upside down above the fold, so that it stands upright once it is folded back. */
  readonly isTurned: boolean;
  /** Whether the text keeps clear of a hole. */
  readonly isHoled: boolean;
  /** Set in smaller type from the start. */
  readonly isSmall: boolean;
  readonly id: string;
  readonly title: string;
  readonly facts: readonly Fact[];
  readonly candidate: string;
  readonly certificate: string;
  /** Where the sheet about this piece begins. */
  readonly leaf: string;
  /** Set on pieces that are sent again. */
  readonly round: number | null;
}

/** Lower tags have no room for the title on a line of its own (common practice, no source). */
const smallBelow = 45;

/** The faces of one tag: those on the side of the paper that is printed first, and those on its back. */
export function tagFaces(
  input: LayoutInput,
  grid: TagGrid,
  item: Item,
  place: Rectangle,
): {readonly front: readonly TagFace[]; readonly back: readonly TagFace[]} {
  const facts = tagFacts(item);
  const measured = measuredFacts(input, item);
  const face = tagFace(input, grid, item);
  switch (grid.reverse) {
    case 'none':
      return {front: [face(place, [...facts, ...measured])], back: []};
    case 'folded': {
      const reverse = face(upperHalf(place), measured);
      return {
        front: [face(lowerHalf(place), facts), {...reverse, isReverse: true, isTurned: true}],
        back: [],
      };
    }
    case 'printed': {
      const reverse = face(fromBehind(grid, place), measured);
      return {front: [face(place, facts)], back: [{...reverse, isReverse: true}]};
    }
  }
}

function tagFace({binder}: LayoutInput, {hasHoles}: TagGrid, item: Item) {
  const {candidate, certificate} = binder.settings;
  return (place: Rectangle, facts: readonly Fact[]): TagFace => ({
    place,
    isReverse: false,
    isTurned: false,
    isHoled: hasHoles,
    isSmall: place.height < smallBelow,
    id: item.id,
    title: setTypography(item.title),
    facts,
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    leaf: firstLeaf(item.id),
    round: latestRework(item)?.round ?? null,
  });
}

function tagFacts(item: Item): readonly Fact[] {
  const {yarn, needles} = 'yarn' in item.fields ? item.fields : {};
  return filled([
    ['Yarn', yarnInShort(yarn)],
    ['Needles', needles === undefined ? null : setTypography(needles.join(', '))],
  ]);
}

function measuredFacts({gaugeInWords}: LayoutInput, item: Item): readonly Fact[] {
  const measured = finalMeasurement(item);
  const gauge = measured && gaugeInWords(measured);
  return filled([
    ['Gauge', gauge && `${gauge}, ${measured.when}`],
    ['Size', edgesInShort(measured?.size)],
  ]);
}

function filled(facts: readonly (readonly [string, string | null])[]): readonly Fact[] {
  return facts.flatMap(([label, value]) => (value === null ? [] : [{label, values: [value]}]));
}
