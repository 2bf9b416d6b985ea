import {UsageError} from '../../support/usage-error.ts';
import {type CommandWords, saying} from '../command.ts';

const shells = ['bash', 'zsh', 'fish'] as const;

/** The command that completes `others` and itself. */
export function completionOf(others: readonly CommandWords[]): CommandWords {
  const completion: CommandWords = {
    name: 'completion',
    summary: 'print a script by which the shell completes commands and options at the Tab key',
    arguments: [{spelling: '<shell>', says: 'bash, zsh or fish', choices: shells}],
    options: [],
    examples: [
      'swatchleaf completion bash >> ~/.bashrc',
      'swatchleaf completion zsh >> ~/.zshrc',
      'swatchleaf completion fish > ~/.config/fish/completions/swatchleaf.fish',
    ],
    async run({words}) {
      const shell = shells.find((each) => each === words[0]);
      if (shell === undefined)
        throw new UsageError(`no completion is known for \`${words[0] ?? ''}\`; name bash, zsh or fish`);
      const {completionScript} = await import('../completion/completion-script.ts');
      return saying(completionScript(shell, [...others, completion]));
    },
  };
  return completion;
}
