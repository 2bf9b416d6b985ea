import type {Item} from '../../model/binder.ts';
import {kindsWithKnitting} from '../../model/kinds.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import {draftMark} from '../page-rules.ts';
import {paperOf} from '../paper.ts';
import type {Rectangle} from '../tab-place.ts';
import {type TagDrawing, tagDrawing, tagPlaces, tagSize} from '../tag-grid.ts';
import {type Fact, yarnInShort} from './facts.ts';
import {firstLeaf} from './leaf-reference.ts';
import {edgesInShort, finalMeasurement} from './measured-in-short.ts';
import {latestRework} from './rework-round.ts';

export interface TagView {
  readonly place: Rectangle;
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

/** Sheets of tags; all measures in millimetres. */
export interface TagsView {
  readonly width: number;
  readonly height: number;
  readonly draft: string | null;
  /** Printed on both sides, each sheet of tags keeps an empty back. */
  readonly hasBacks: boolean;
  readonly pages: readonly {readonly tags: readonly TagView[]; readonly drawing: TagDrawing}[];
}

/** The items that are pieces of knitting, in the order of the binder. */
export function piecesOfKnitting(input: LayoutInput): readonly Item[] {
  return [...input.composed.values()]
    .map(({item}) => item)
    .filter(({kind, requirement}) => kindsWithKnitting.includes(kind) && requirement !== null);
}

export function tagsView(input: LayoutInput, items: readonly Item[]): TagsView {
  const {settings} = input.binder;
  const paper = paperOf(settings);
  const places = tagPlaces(paper, tagSize(settings));
  const pageCount = Math.ceil(items.length / places.length);
  return {
    width: paper.width,
    height: paper.height,
    draft: input.draft === null ? null : draftMark(input.draft.errors),
    hasBacks: settings.sides === 'duplex',
    pages: Array.from({length: pageCount}, (_, page) => {
      const onPage = items.slice(page * places.length, (page + 1) * places.length);
      const taken = places.slice(0, onPage.length);
      return {
        tags: taken.flatMap((place, index) => {
          const item = onPage[index];
          return item === undefined ? [] : [tagView(input, item, place)];
        }),
        drawing: tagDrawing(taken),
      };
    }),
  };
}

function tagView(input: LayoutInput, item: Item, place: Rectangle): TagView {
  const {candidate, certificate} = input.binder.settings;
  return {
    place,
    id: item.id,
    title: setTypography(item.title),
    facts: tagFacts(input, item),
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    leaf: firstLeaf(item.id),
    round: latestRework(item)?.round ?? null,
  };
}

function tagFacts({gaugeInWords}: LayoutInput, item: Item): readonly Fact[] {
  const measured = finalMeasurement(item);
  const gauge = measured && gaugeInWords(measured);
  const {yarn, needles} = 'yarn' in item.fields ? item.fields : {};
  const facts: readonly [string, string | null][] = [
    ['Yarn', yarnInShort(yarn)],
    ['Needles', needles === undefined ? null : setTypography(needles.join(', '))],
    ['Gauge', gauge && `${gauge}, ${measured.when}`],
    ['Size', edgesInShort(measured?.size)],
  ];
  return facts.flatMap(([label, value]) => (value === null ? [] : [{label, values: [value]}]));
}
