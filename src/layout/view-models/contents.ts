import type {Item} from '../../model/binder.ts';
import {itemsById, type Requirement, type Section} from '../../model/binder.ts';
import {setTypography} from '../../support/typography.ts';
import {itemAnchor} from '../item-anchor.ts';
import type {LayoutInput} from '../layout-input.ts';
import type {PageCounts} from '../printable.ts';
import {hasAttempts} from './attempts.ts';
import {hasConcordance} from './concordance.ts';
import {leafRange} from './leaf-range.ts';
import {latestRework} from './rework-round.ts';

export interface ContentsRow {
  readonly id: string;
  readonly title: string;
  /** Null for an item that has no sheet. */
  readonly anchor: string | null;
  /** Null while the page count is unknown, and for an item that has no sheet. */
  readonly leaves: string | null;
  readonly state: string;
}

export interface SectionList {
  readonly number: number;
  readonly title: string;
  readonly anchor: string;
  readonly rows: readonly ContentsRow[];
}

export interface ContentsView {
  readonly sections: readonly SectionList[];
  /** The leaves of the reference list; null when the binder cites nothing. */
  readonly references: {readonly anchor: string; readonly leaves: string | null} | null;
  readonly appendices: readonly {
    readonly title: string;
    readonly anchor: string;
    readonly leaves: string | null;
  }[];
}

/** The ids of the sheets that are no item's. */
export const frontAnchors = {
  title: 'sheet-title',
  contents: 'sheet-contents',
  references: 'sheet-references',
  concordance: 'sheet-concordance',
  attempts: 'sheet-attempts',
};

/** The sheets behind the reference list that this binder prints, with what their leaves are called. */
export function appendicesOf(input: LayoutInput) {
  return [
    ...(hasConcordance(input) ? [{title: 'Techniques', anchor: frontAnchors.concordance}] : []),
    ...(hasAttempts(input) ? [{title: 'Attempts', anchor: frontAnchors.attempts}] : []),
  ];
}

export function dividerAnchor(section: Section): string {
  return `tab-${section.number}`;
}

export function contentsView(input: LayoutInput, counts: PageCounts): ContentsView {
  return {
    sections: input.binder.syllabus.sections.map((section) => sectionList(input, section, counts)),
    references:
      input.references.length === 0
        ? null
        : {anchor: frontAnchors.references, leaves: leafRange(counts?.get(frontAnchors.references))},
    appendices: appendicesOf(input).map(({title, anchor}) => ({
      title,
      anchor,
      leaves: leafRange(counts?.get(anchor)),
    })),
  };
}

/** A section with its items; also the list on its divider. */
export function sectionList(input: LayoutInput, section: Section, counts: PageCounts): SectionList {
  const items = itemsById(input.binder);
  return {
    number: section.number,
    title: setTypography(section.title),
    anchor: dividerAnchor(section),
    rows: section.requirements.map((requirement) =>
      row(input, requirement, items.get(requirement.id), counts),
    ),
  };
}

function row(
  input: LayoutInput,
  requirement: Requirement,
  item: Item | undefined,
  counts: PageCounts,
): ContentsRow {
  const {id} = requirement;
  const anchor = itemAnchor(input, id);
  return {
    id,
    title: setTypography(item?.title ?? requirement.title),
    anchor,
    leaves: anchor === null ? null : leafRange(counts?.get(anchor)),
    state: stateInWords(item),
  };
}

/** The item's state as its front matter gives it, and the round it is sent again in. */
export function stateInWords(item: Item | undefined): string {
  if (item === undefined) return 'to come';
  const round = latestRework(item)?.round;
  const status = item.fields.status ?? '';
  if (round === undefined) return status;
  return status === '' ? `round ${round}` : `${status}, round ${round}`;
}
