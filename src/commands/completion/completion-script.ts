import type {CommandWords} from '../command.ts';
import {bashScript} from './bash-script.ts';
import {completedCommands} from './completed-command.ts';
import {fishScript} from './fish-script.ts';
import {zshScript} from './zsh-script.ts';

const scripts = {bash: bashScript, zsh: zshScript, fish: fishScript} as const;

/** The script for a shell; it knows the commands, their options and what these may be, and leaves the rest to file names. */
export function completionScript(shell: keyof typeof scripts, commands: readonly CommandWords[]): string {
  return scripts[shell](completedCommands(commands));
}
