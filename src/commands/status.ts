import {type Outcome, type Surroundings, saying} from './command.ts';
import {openBinder} from './open-binder.ts';
import {type StatusWishes, tellStatus} from './status/tell-status.ts';

/**
 * Says how far the binder is, or everything about the named items, or which questions belong to a piece. Reads and
 * checks; writes nothing. Throws `UsageError` for an id that the syllabus does not name.
 */
export async function runStatus(
  folder: string,
  around: Surroundings,
  wishes: StatusWishes,
): Promise<Outcome> {
  const {binder, findings, textOf} = await openBinder(folder, around);
  if (binder === null) return {findings, textOf, written: [], isBroken: true};
  return saying(tellStatus(binder, findings, wishes, around.columns));
}
