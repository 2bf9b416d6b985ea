import type {BinderSettings} from '../../model/schema/binder-settings.ts';
import {setTypography} from '../../support/typography.ts';
import {cutMarks} from '../cut-marks.ts';
import type {LayoutInput} from '../layout-input.ts';
import {paperOf, type Size} from '../paper.ts';
import type {Rectangle} from '../tab-place.ts';
import {labelPlaces, tagPlaces} from '../tag-grid.ts';
import {type CuttingPage, cuttingPage, draftOf} from './cutting-page.ts';

export interface SpineView extends CuttingPage, Named {
  readonly place: Rectangle;
  readonly cutMarks: string;
}

export interface CoverView extends Size, Named {
  readonly draft: string | null;
  readonly guild: string | null;
}

export interface TabStripsView extends CuttingPage {
  readonly pages: readonly {readonly strips: readonly TabStrip[]; readonly cutMarks: string}[];
}

interface TabStrip {
  readonly place: Rectangle;
  readonly number: number;
  readonly text: string;
}

/** Whose binder it is and what for. */
interface Named {
  readonly certificate: string;
  readonly part: string | null;
  readonly name: string | null;
  readonly number: string | null;
}

type NamedAs = NonNullable<BinderSettings['inserts']>['candidate'];

/** A spine as high as the paper is cut at its sides only. */
export function spineView(input: LayoutInput, size: Size, namedAs: NamedAs): SpineView {
  const paper = paperOf(input.binder.settings);
  const place = {...size, x: (paper.width - size.width) / 2, y: (paper.height - size.height) / 2};
  return {
    ...cuttingPage(input, size.width),
    ...named(input, namedAs),
    place,
    cutMarks: cutMarks(paper, [place]),
  };
}

/** A leaf as large as the paper, without holes. */
export function coverView(input: LayoutInput, namedAs: NamedAs): CoverView {
  const {width, height} = paperOf(input.binder.settings);
  const {guild} = input.binder.settings.certificate;
  return {
    width,
    height,
    draft: draftOf(input),
    guild: guild === undefined ? null : setTypography(guild),
    ...named(input, namedAs),
  };
}

/** One strip for each section, in their order, one below the other in the middle of the paper. */
export function tabStripsView(input: LayoutInput, size: Size): TabStripsView {
  const {sections} = input.binder.syllabus;
  const paper = paperOf(input.binder.settings);
  const most = new Set(tagPlaces(paper, size).map(({y}) => y)).size;
  return {
    ...cuttingPage(input, size.width),
    pages: Array.from({length: Math.ceil(sections.length / most)}, (_, page) => {
      const onPage = sections.slice(page * most, (page + 1) * most);
      const places = columnOf(paper, size, onPage.length);
      return {
        strips: onPage.flatMap(({number, tab}, index) => {
          const place = places[index];
          return place === undefined ? [] : [{place, number, text: setTypography(tab)}];
        }),
        cutMarks: cutMarks(paper, places),
      };
    }),
  };
}

/** The head of the page stays free where the strips leave room for it. */
const belowHead = 24;

function columnOf(paper: Size, size: Size, rows: number): readonly Rectangle[] {
  const left = (paper.width - size.width) / 2;
  const top = Math.min(belowHead, (paper.height - rows * size.height) / 2);
  return labelPlaces({...size, columns: 1, rows, left, top, gapAcross: 0, gapDown: 0});
}

function named({binder}: LayoutInput, namedAs: NamedAs): Named {
  const {candidate, certificate} = binder.settings;
  return {
    certificate: setTypography(certificate.name),
    part: certificate.part === undefined ? null : setTypography(certificate.part),
    name: namedAs === 'number' ? null : setTypography(candidate.name),
    number: namedAs === 'name' ? null : (candidate.number ?? null),
  };
}
