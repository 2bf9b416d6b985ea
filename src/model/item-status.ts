import type {Finding} from '../diagnostics/finding.ts';
import {type AskedAndThere, askedAndThere} from './asked-and-there.ts';
import {type AttemptFacts, attemptFacts} from './attempt-facts.ts';
import {type Binder, itemsById, type Requirement} from './binder.ts';
import {type RequirementStatus, requirementStatus} from './binder-status.ts';
import {type Clipping, clippingsFor} from './clippings.ts';
import {
  type ItemDate,
  itemDates,
  type PrintedLeaf,
  printedLeaves,
  type RoundHistory,
  roundsOf,
} from './item-history.ts';
import {tiedQuestions} from './tied-questions.ts';

/** Everything that is known about one requirement. */
export interface ItemStatus extends RequirementStatus {
  readonly section: string;
  readonly asks: string | null;
  readonly dates: readonly ItemDate[];
  /** Everything that `check` found in its file. */
  readonly findings: readonly Finding[];
  readonly limits: readonly AskedAndThere[];
  /** The questions that belong to it. */
  readonly questions: readonly RequirementStatus[];
  /** What it belongs to itself, as a question does. */
  readonly tiedTo: readonly RequirementStatus[];
  readonly attempts: readonly AttemptFacts[];
  /** What was read for it, the first first. */
  readonly clippings: readonly Clipping[];
  readonly rounds: readonly RoundHistory[];
  readonly leaves: readonly PrintedLeaf[];
}

/** `findings` are those of `check`. */
export function itemStatus(
  binder: Binder,
  findings: readonly Finding[],
  requirement: Requirement,
): ItemStatus {
  const {sections} = binder.syllabus;
  const {id} = requirement;
  const item = itemsById(binder).get(id) ?? null;
  const status = requirementStatus(binder, findings);
  const all = sections.flatMap(({requirements}) => requirements);
  return {
    ...status(requirement),
    section: sections.find(({requirements}) => requirements.includes(requirement))?.title ?? '',
    asks: requirement.asks,
    dates: item ? itemDates(item) : [],
    findings: findings.filter(({file}) => file === item?.file),
    limits: item ? askedAndThere(item, binder) : [],
    questions: tiedQuestions(binder, id).map(status),
    tiedTo: all.filter((one) => requirement.tiedTo.includes(one.id)).map(status),
    attempts: item ? attemptFacts(item) : [],
    clippings: clippingsFor(binder.clippings.entries, id),
    rounds: roundsOf(binder, id, item),
    leaves: printedLeaves(binder, id),
  };
}
