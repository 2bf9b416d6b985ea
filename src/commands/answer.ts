import {type Binder, itemsById} from '../model/binder.ts';
import {statesOf} from '../model/item-state.ts';
import {nextRound, unansweredRound} from '../model/next-round.ts';
import {assessmentsFolder} from '../model/read-binder-files.ts';
import {plural} from '../support/plural.ts';
import {UsageError} from '../support/usage-error.ts';
import type {Outcome, Surroundings} from './command.ts';
import {openBinder} from './open-binder.ts';

/**
 * Lays down the file into which the assessors' answer is typed: a line for each item that was sent, its result open.
 * Throws `UsageError` when the file is there already or nothing was sent that waits for an answer.
 */
export async function runAnswer(folder: string, around: Surroundings): Promise<Outcome> {
  const {binder, findings, textOf, workspace} = await openBinder(folder, around);
  if (binder === null) return {findings, textOf, written: [], isBroken: true};
  const {round, ids} = awaited(binder);
  const path = `${assessmentsFolder}round-${round}.yaml`;
  if (!(await workspace.create(path, stub(round, around.today, ids)))) {
    throw new UsageError(`\`${path}\` is there already; write the answer into it`);
  }
  return {
    findings: [],
    textOf,
    written: [path],
    isBroken: false,
    text: `${plural(ids.length, 'item')} of round ${round}: write \`passed\` or \`rework\` for each, and the remarks word for word.\n`,
  };
}

function awaited(binder: Binder): {readonly round: number; readonly ids: readonly string[]} {
  const posting = unansweredRound(binder);
  if (posting !== null) return {round: posting.round, ids: Object.keys(posting.items)};
  if (binder.sentRounds.length > 0)
    throw new UsageError('every round that was sent has its answer; `send` posts the next');
  // A binder that was posted without `send`: all that is finished went into the box.
  const open = binder.assessments.find(({results}) =>
    Object.values(results).some(({result}) => result === 'open'),
  );
  if (open !== undefined) throw new UsageError(`\`${open.file}\` is there already; write the answer into it`);
  const posted = [...statesOf(binder)]
    .filter(([id, state]) => itemsById(binder).has(id) && !['planned', 'in work', 'passed'].includes(state))
    .map(([id]) => id);
  if (posted.length === 0) throw new UsageError('no item is finished, so there is none to answer');
  return {round: nextRound(binder), ids: posted};
}

function stub(round: number, today: string, ids: readonly string[]): string {
  const lines = ids.map((id) => `  ${id}: {result: open}\n`);
  return `# The assessors' answer to round ${round}, typed in from their letter. For each item write \`passed\` or \`rework\` in the
# place of \`open\`; a remark goes below it, word for word:
#
#   S-07:
#     result: rework
#     remark: >-
#       What the letter says.

round: ${round}
received: ${today}
results:
${lines.join('')}`;
}
