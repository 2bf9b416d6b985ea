import type {Finding} from '../diagnostics/finding.ts';

/** What the command line tells every command about the world around it. */
export interface Surroundings {
  /** Folder that the binder folder is given relative to. */
  readonly currentFolder: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Today, year-month-day, in the candidate's time zone. */
  readonly today: string;
  /** One line about what is going on; goes to standard error. */
  readonly progress: (line: string) => void;
  /** The program's version. */
  readonly version: string;
  /** How many letters fit on a line of the terminal; 80 where there is none. */
  readonly columns: number;
  /** Puts a question to the person at the terminal; null where there is no terminal to ask at. */
  readonly ask: ((question: string) => Promise<string>) | null;
}

export const findingsFormats = ['text', 'json', 'sarif'] as const;
export type FindingsFormat = (typeof findingsFormats)[number];

/** What a command found and made; the command line prints it and sets the exit code from the findings. */
export interface Outcome {
  readonly findings: readonly Finding[];
  /** Text of a file named in a finding, for code frames; null when there is none. */
  readonly textOf: (file: string) => string | null;
  /** Files written, relative to the binder folder. */
  readonly written: readonly string[];
  /** Whether the binder file or the syllabus could not be read, so that most was not checked: exit code 2. */
  readonly isBroken: boolean;
  /** Whether this computer lacks something that was looked for: exit code 3. */
  readonly isLacking?: boolean;
  /** What the command was asked to say, for standard output; ends with a line end. */
  readonly text?: string;
  /** Set when the findings themselves were asked for: all of them go to standard output in this form. */
  readonly format?: FindingsFormat;
}

/** An argument or an option as the command line shows it. */
export interface Wording {
  /** As commander spells it: `[folder]`, `<file>`, `[ids...]`, `--only <ids...>`. */
  readonly spelling: string;
  readonly says: string;
  readonly choices?: readonly string[];
  readonly default?: string;
}

/** The value of an option as it was typed; `true` for one that takes no value. */
export type OptionValue = string | boolean | readonly string[];

/** What was typed after the command's name. */
export interface Typed {
  /** The arguments in order; those of a list one by one. */
  readonly words: readonly string[];
  /** By the option's long name without its hyphens in front, such as `only`. */
  readonly options: Readonly<Record<string, OptionValue | undefined>>;
}

/** A command as the command line offers it. Kept apart from the work, so that help and start-up load none of it. */
export interface CommandWords {
  readonly name: string;
  readonly summary: string;
  readonly arguments: readonly Wording[];
  readonly options: readonly Wording[];
  /** Whole lines, such as `swatchleaf check my-binder`. */
  readonly examples: readonly string[];
  /**
   * The folder typed, for a command that writes into the binder: it runs only while no other such command does. Left out
   * for one that writes nothing there, or nothing that another depends on.
   */
  writesInto?(typed: Typed): string;
  /** Loads and does the work. Throws `UsageError` and `OperationalError`. */
  run(typed: Typed, around: Surroundings): Promise<Outcome>;
}

/** The outcome of a command that only says something. */
export function saying(text: string): Outcome {
  return {findings: [], textOf: () => null, written: [], isBroken: false, text};
}

/** The option's text; null when it was not given. */
export function textOption({options}: Typed, name: string): string | null {
  const value = options[name];
  return typeof value === 'string' ? value : null;
}

/** The option's texts; empty when it was not given. */
export function listOption({options}: Typed, name: string): readonly string[] {
  const value = options[name];
  return typeof value === 'object' ? value : typeof value === 'string' ? [value] : [];
}
