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
}

/** What a command found and made; the command line prints it and sets the exit code from the findings. */
export interface Outcome {
  readonly findings: readonly Finding[];
  /** Text of a file named in a finding, for code frames; null when there is none. */
  readonly textOf: (file: string) => string | null;
  /** Files written, relative to the binder folder. */
  readonly written: readonly string[];
  /** Whether the binder file or the syllabus could not be read, so that most was not checked: exit code 2. */
  readonly isBroken: boolean;
}
