import type {Finding} from '../diagnostics/finding.ts';
import {type Binder, itemsById, type Requirement} from './binder.ts';
import {countStates, type ItemState, type StateCounts, statesOf} from './item-state.ts';
import type {Kind} from './kinds.ts';
import {amountMissing, fitsAnEvening, type Missing, missingIn, needsNeedles} from './missing.ts';

/** How far one requirement is. */
export interface RequirementStatus {
  readonly id: string;
  /** The item's own title; the requirement's while there is no item. */
  readonly title: string;
  readonly kind: Kind;
  readonly state: ItemState;
  /** Null while there is no item. */
  readonly file: string | null;
  /** What keeps it from being posted; empty for one that is planned, sent or passed. */
  readonly missing: readonly Missing[];
}

export interface SectionStatus {
  readonly number: number;
  readonly title: string;
  readonly counts: StateCounts;
  readonly requirements: readonly RequirementStatus[];
}

export interface BinderStatus {
  readonly counts: StateCounts;
  readonly sections: readonly SectionStatus[];
  /** Items in work or to rework that lack nothing. */
  readonly ready: readonly RequirementStatus[];
  /** Items that lack something: those that lack least first. */
  readonly nearest: readonly RequirementStatus[];
  /** Those of `nearest` that one evening could finish; see `fitsAnEvening`. */
  readonly evening: readonly RequirementStatus[];
}

/** `findings` are those of `check`. */
export function binderStatus(binder: Binder, findings: readonly Finding[]): BinderStatus {
  const status = requirementStatus(binder, findings);
  const sections = binder.syllabus.sections.map(({number, title, requirements}) => {
    const all = requirements.map(status);
    return {number, title, counts: countStates(all.map(({state}) => state)), requirements: all};
  });
  const all = sections.flatMap(({requirements}) => requirements);
  const nearest = nearestFirst(all.filter(({missing}) => missing.length > 0));
  return {
    counts: countStates(all.map(({state}) => state)),
    sections,
    ready: all.filter(({state, missing}) => ['in work', 'rework'].includes(state) && missing.length === 0),
    nearest,
    evening: nearest.filter(({missing}) => fitsAnEvening(missing)),
  };
}

/** Tells how far any requirement of the syllabus is; the states and the items are looked up once for all. */
export function requirementStatus(
  binder: Binder,
  findings: readonly Finding[],
): (requirement: Requirement) => RequirementStatus {
  const states = statesOf(binder);
  const items = itemsById(binder);
  return ({id, title, kind}) => {
    const item = items.get(id);
    const state = states.get(id) ?? 'planned';
    const isOpen = !['planned', 'sent', 'passed'].includes(state);
    return {
      id,
      title: item?.title ?? title,
      kind,
      state,
      file: item?.file ?? null,
      missing: item !== undefined && isOpen ? missingIn(item, findings) : [],
    };
  };
}

/** What must be knitted comes last; then the least missing comes first; then the order of the syllabus. */
function nearestFirst(list: readonly RequirementStatus[]): readonly RequirementStatus[] {
  return [...list].sort(
    (a, b) =>
      Number(needsNeedles(a.missing)) - Number(needsNeedles(b.missing)) ||
      amountMissing(a.missing) - amountMissing(b.missing),
  );
}
