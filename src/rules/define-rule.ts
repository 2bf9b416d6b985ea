import type {Finding, Severity} from '../diagnostics/finding.ts';
import type {Binder} from '../model/binder.ts';

/** What a rule says of one fault; the runner adds the rule's id and severity. */
export type Fault = Omit<Finding, 'rule' | 'severity'>;

/** A rule's tolerances as set in the syllabus or binder file, over its own defaults. */
export type RuleOptions = Readonly<Record<string, unknown>>;

/** One law about the binder. It finds and reports; it never changes the binder and never reads a file. */
export interface Rule {
  /** Permanent; equal to the file name. */
  readonly id: string;
  /** The law as a sentence, without a full stop. */
  readonly summary: string;
  readonly severity: Severity;
  check(binder: Binder, report: (fault: Fault) => void, options: RuleOptions): void;
}
