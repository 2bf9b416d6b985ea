import type {Requirement, Section} from '../model/binder.ts';
import {setTypography} from '../support/typography.ts';
import {itemSheet} from './item-sheet.ts';
import type {LayoutInput} from './layout-input.ts';
import {type PlannedSheet, plainPage, sheetAnchor, withBlankBacks} from './planned-sheet.ts';
import type {PageCounts} from './printable.ts';
import type {TabNumber} from './tab-place.ts';
import {attemptsView, hasAttempts} from './view-models/attempts.ts';
import {concordanceView, hasConcordance} from './view-models/concordance.ts';
import {contentsView, dividerAnchor, frontAnchors, sectionList} from './view-models/contents.ts';
import {placeholderView} from './view-models/placeholder.ts';
import {referencesView} from './view-models/references.ts';
import {titlePageView} from './view-models/title-page.ts';

/** Every sheet of the binder in order: title, contents, each section behind its divider, references, appendices. */
export function binderSheets(input: LayoutInput, counts: PageCounts): readonly PlannedSheet[] {
  const {settings, syllabus} = input.binder;
  const sheets = [
    titleSheet(input),
    commonSheet('contents', 'Contents', 'What the binder holds', contentsView(input, counts)),
    ...syllabus.sections.flatMap((section) => sectionSheets(input, section, counts)),
    ...(input.references.length === 0
      ? []
      : [commonSheet('references', 'References', 'Every source that is cited', referencesView(input))]),
    ...(hasConcordance(input)
      ? [commonSheet('concordance', 'Techniques', 'What each source calls them', concordanceView(input))]
      : []),
    ...(hasAttempts(input)
      ? [commonSheet('attempts', 'Attempts', 'What was tried, and how it came out', attemptsView(input))]
      : []),
  ];
  return settings.sides === 'duplex' ? withBlankBacks(sheets, counts) : sheets;
}

function titleSheet(input: LayoutInput): PlannedSheet {
  return {
    anchor: frontAnchors.title,
    label: 'Title',
    title: setTypography(input.binder.settings.certificate.name),
    blank: false,
    layout: 'title-page',
    view: titlePageView(input),
    page: {hasHead: false, isNumbered: false, edge: null},
  };
}

/** A sheet of the binder as a whole, which is no item's. */
function commonSheet(
  layout: 'contents' | 'references' | 'concordance' | 'attempts',
  label: string,
  title: string,
  view: object,
): PlannedSheet {
  return {anchor: frontAnchors[layout], label, title, blank: false, layout, view, page: plainPage};
}

function sectionSheets(input: LayoutInput, section: Section, counts: PageCounts): readonly PlannedSheet[] {
  const place = {number: section.number, of: input.binder.syllabus.sections.length};
  return [
    dividerSheet(input, section, place, counts),
    ...section.requirements.flatMap((requirement) => requirementSheets(input, requirement, place)),
  ];
}

function dividerSheet(
  input: LayoutInput,
  section: Section,
  place: TabNumber,
  counts: PageCounts,
): PlannedSheet {
  return {
    anchor: dividerAnchor(section),
    label: `Tab ${section.number}`,
    title: setTypography(section.title),
    blank: false,
    layout: 'divider',
    view: sectionList(input, section, counts),
    page: {hasHead: false, isNumbered: true, edge: {drawn: 'tab', place, text: setTypography(section.tab)}},
  };
}

/** The item's sheet; in a draft, a sheet that says it is still to come. */
function requirementSheets(
  input: LayoutInput,
  requirement: Requirement,
  place: TabNumber,
): readonly PlannedSheet[] {
  const edge = {drawn: 'thumb', place} as const;
  const composed = input.composed.get(requirement.id);
  if (composed !== undefined) return [itemSheet(input, composed, edge)];
  if (input.draft === null) return [];
  return [
    {
      anchor: sheetAnchor(requirement.id),
      label: requirement.id,
      title: setTypography(requirement.title),
      blank: false,
      layout: 'placeholder',
      view: placeholderView(requirement),
      page: {...plainPage, edge},
    },
  ];
}
