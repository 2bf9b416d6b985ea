import type {RequirementStatus} from '../../model/binder-status.ts';
import type {ItemStatus} from '../../model/item-status.ts';
import {stateAndMissing, stateInWords} from '../../model/state-words.ts';
import {wrapWords} from '../../support/wrap-words.ts';
import {itemLines} from './item-lines.ts';

/** The questions that belong to one piece, to be answered while it is on the needles. */
export function tiedText({id, title, state, questions, tiedTo}: ItemStatus, columns: number): string {
  return [
    ...wrapWords(`${id} ${title}, ${stateInWords(state)}`, columns),
    ...listed('Questions beside it', questions),
    ...listed('Belongs to', tiedTo),
    ...(questions.length + tiedTo.length > 0
      ? []
      : wrapWords(`No question of the syllabus is tied to ${id}.`, columns)),
    '',
  ].join('\n');

  function listed(heading: string, list: readonly RequirementStatus[]): readonly string[] {
    return list.length > 0 ? ['', heading, ...itemLines(list, stateAndMissing, columns)] : [];
  }
}
