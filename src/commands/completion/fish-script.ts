import {type CompletedCommand, type CompletedOption, programOptions} from './completed-command.ts';

/** For fish 3 and newer. */
export function fishScript(commands: readonly CompletedCommand[]): string {
  const atStart = '-n __fish_use_subcommand';
  return [
    '# Completion of swatchleaf for fish.',
    ...commands.map(({name, says}) => `complete -c swatchleaf ${atStart} -f -a ${name} -d ${quoted(says)}`),
    ...programOptions.map((option) => `complete -c swatchleaf ${atStart} ${described(option)}`),
    ...commands.flatMap(({name, options, choices}) => {
      const within = `-n ${quoted(`__fish_seen_subcommand_from ${name}`)}`;
      return [
        ...options.map((option) => `complete -c swatchleaf ${within} ${described(option)}`),
        ...(choices.length > 0
          ? [`complete -c swatchleaf ${within} -f -a ${quoted(choices.join(' '))}`]
          : []),
      ];
    }),
    '',
  ].join('\n');
}

function described({flag, says, takesValue, choices}: CompletedOption): string {
  const value = choices.length > 0 ? `-x -a ${quoted(choices.join(' '))}` : takesValue ? '-r' : '-f';
  return `-l ${flag.slice(2)} ${value} -d ${quoted(says)}`;
}

function quoted(text: string): string {
  return `'${text.replace(/[\\']/g, '\\$&')}'`;
}
