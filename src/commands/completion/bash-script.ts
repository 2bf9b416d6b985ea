import {type CompletedCommand, programOptions} from './completed-command.ts';

/** For bash 3.2 and newer. Where nothing is known beforehand, bash completes file names. */
export function bashScript(commands: readonly CompletedCommand[]): string {
  const values = commands.flatMap(({name, options}) =>
    options
      .filter(({takesValue}) => takesValue)
      .map(({flag, choices}) => `    ${name}:${flag}) ${choices.length > 0 ? offer(choices) : 'return'} ;;`),
  );
  const byCommand = commands.map(
    ({name, options, choices}) =>
      `    ${name}:-*) ${offer(options.map(({flag}) => flag))} ;;${
        choices.length > 0 ? `\n    ${name}:*) ${offer(choices)} ;;` : ''
      }`,
  );
  return `# Completion of swatchleaf for bash.
_swatchleaf() {
  local word=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} command= words= at
  # bash takes \`--format=json\` apart at the sign.
  if [[ $before == = ]]; then before=\${COMP_WORDS[COMP_CWORD-2]}; fi
  if [[ $word == = ]]; then word=; fi
  for ((at = 1; at < COMP_CWORD; at++)); do
    if [[ \${COMP_WORDS[at]} != -* ]]; then command=\${COMP_WORDS[at]}; break; fi
  done
  COMPREPLY=()
  case $command:$before in
${values.join('\n')}
  esac
  if [[ -z $words ]]; then case $command:$word in
    :-*) ${offer(programOptions.map(({flag}) => flag))} ;;
    :*) ${offer(commands.map(({name}) => name))} ;;
${byCommand.join('\n')}
  esac; fi
  COMPREPLY=($(compgen -W "$words" -- "$word"))
}
complete -o bashdefault -o default -F _swatchleaf swatchleaf
`;
}

function offer(words: readonly string[]): string {
  return `words='${words.join(' ')}'`;
}
