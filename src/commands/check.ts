import type {FindingsFormat, Outcome, Surroundings} from './command.ts';
import {openBinder} from './open-binder.ts';

/** Reads everything, applies every rule, writes nothing. */
export async function runCheck(
  folder: string,
  around: Surroundings,
  format: FindingsFormat,
): Promise<Outcome> {
  const {binder, findings, textOf} = await openBinder(folder, around);
  return {findings, textOf, written: [], isBroken: binder === null, format};
}
