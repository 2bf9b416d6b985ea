import {citationStyles, papers, ringCounts, unitSystems} from '../model/print-choices.ts';
import {englishList} from '../support/english-list.ts';
import type {Surroundings} from './command.ts';

/** What the command line said; null where it said nothing. */
export interface Asked {
  readonly name: string | null;
  readonly paper: string | null;
  readonly rings: string | null;
  readonly units: string | null;
  readonly style: string | null;
}

/** As they are written into the binder file. `name` is null while nobody has said it. */
export interface StarterSettings {
  readonly name: string | null;
  readonly paper: string;
  readonly rings: string;
  readonly units: string;
  readonly style: string;
}

/**
 * Asks at the terminal for what the command line did not say; without a terminal, and for an empty answer, the usual
 * choice is taken. Rings and units follow the paper: Letter goes with three rings and inches (common practice, no source).
 */
export async function askForSettings(asked: Asked, around: Surroundings): Promise<StarterSettings> {
  const choose = (what: string, given: string | null, standard: string, choices: readonly string[]) =>
    given ?? chosen(what, standard, choices, around);
  const name = (asked.name ?? (await around.ask?.('Your name, as it is printed: ')) ?? '').trim();
  const paper = await choose('Paper', asked.paper, papers[0], papers);
  const isAmerican = paper === 'Letter';
  const rings = await choose('Rings', asked.rings, isAmerican ? '3' : '2', ringCounts.map(String));
  const units = await choose(
    'Units that stand first',
    asked.units,
    isAmerican ? 'inch' : 'metric',
    unitSystems,
  );
  const style = await choose('Citations', asked.style, citationStyles[0], citationStyles);
  return {name: name === '' ? null : name, paper, rings, units, style};
}

async function chosen(
  what: string,
  standard: string,
  choices: readonly string[],
  {ask, progress}: Surroundings,
): Promise<string> {
  if (ask === null) return standard;
  for (;;) {
    const answer = (await ask(`${what}, ${englishList(choices, 'or')} [${standard}]: `)).trim();
    const choice = choices.find((each) => each.toLowerCase() === (answer || standard).toLowerCase());
    if (choice !== undefined) return choice;
    progress(
      `\`${answer}\` cannot be: write ${englishList(choices, 'or')}, or only press Enter for ${standard}.`,
    );
  }
}
