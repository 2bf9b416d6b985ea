import {type CompletedCommand, type CompletedOption, programOptions} from './completed-command.ts';

/** For zsh 5 and newer, read at its start or found on its search path. */
export function zshScript(commands: readonly CompletedCommand[]): string {
  const names = commands.map(({name, says}) => `    ${quoted(`${name}:${says.replaceAll(':', '\\:')}`)}`);
  const byCommand = commands.map(({name, options, choices}) => {
    const rest = choices.length > 0 ? `:what:(${choices.join(' ')})` : ':file:_files';
    return `    ${name}) _arguments ${[...options.map(option), quoted(`*${rest}`)].join(' ')} ;;`;
  });
  return `#compdef swatchleaf
# Completion of swatchleaf for zsh.
_swatchleaf() {
  local -a commands
  commands=(
${names.join('\n')}
  )
  if (( CURRENT == 2 )); then
    if [[ $words[2] == -* ]]; then _arguments ${programOptions.map(option).join(' ')}
    else _describe command commands; fi
    return
  fi
  local command=$words[2]
  shift words
  (( CURRENT-- ))
  case $command in
${byCommand.join('\n')}
  esac
}
if [[ $funcstack[1] == _swatchleaf ]]; then _swatchleaf "$@"
else
  if (( ! $+functions[compdef] )); then autoload -Uz compinit && compinit; fi
  compdef _swatchleaf swatchleaf
fi
`;
}

function option({flag, says, takesValue, choices}: CompletedOption): string {
  const value = choices.length > 0 ? `:value:(${choices.join(' ')})` : ':value:_files';
  return quoted(`${flag}[${says.replace(/[\\[\]]/g, '\\$&')}]${takesValue ? value : ''}`);
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", "'\\''")}'`;
}
