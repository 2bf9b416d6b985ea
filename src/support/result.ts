/** A part of a text, by offsets: `start` inclusive, `end` exclusive, in UTF-16 units from the start of that text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * What a reader of author text could not understand. `message` states the fact with values in backticks,
 * `hint` says in one sentence what to do; `span` is the smallest part that still shows the fault.
 */
export interface Problem {
  readonly message: string;
  readonly hint: string;
  readonly span: Span;
}

/** A value, or the problems that stood in its way. Readers of author text return this instead of throwing. */
export type Result<T> =
  | {readonly ok: true; readonly value: T}
  | {readonly ok: false; readonly problems: readonly Problem[]};

export function success<T>(value: T): Result<T> {
  return {ok: true, value};
}

export function failure(...problems: readonly Problem[]): Result<never> {
  return {ok: false, problems};
}
