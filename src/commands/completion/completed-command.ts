import type {CommandWords, Wording} from '../command.ts';

export interface CompletedOption {
  /** With its hyphens in front. */
  readonly flag: string;
  readonly says: string;
  readonly takesValue: boolean;
  /** What the value may be; empty where that is not known beforehand. */
  readonly choices: readonly string[];
}

/** A command as a shell completes it. */
export interface CompletedCommand {
  readonly name: string;
  readonly says: string;
  readonly options: readonly CompletedOption[];
  /** What its argument may be; empty where file names serve. */
  readonly choices: readonly string[];
}

export const programOptions: readonly CompletedOption[] = [
  {flag: '--help', says: 'show help', takesValue: false, choices: []},
  {flag: '--version', says: 'show the version', takesValue: false, choices: []},
  {flag: '--verbose', says: 'show what stood behind an error', takesValue: false, choices: []},
];

export function completedCommands(commands: readonly CommandWords[]): readonly CompletedCommand[] {
  return [
    ...commands.map(({name, summary, options, arguments: words}) => ({
      name,
      says: summary,
      options: [...options.map(completedOption), ...programOptions.slice(0, 1)],
      choices: words.flatMap(({choices = []}) => choices),
    })),
    {name: 'help', says: 'show help for a command', options: [], choices: commands.map(({name}) => name)},
  ];
}

function completedOption({spelling, says, choices = []}: Wording): CompletedOption {
  const [flag = '', value] = spelling.split(' ');
  return {flag, says, takesValue: value !== undefined, choices};
}
