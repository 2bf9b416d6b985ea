import type {Finding, Severity} from '../diagnostics/finding.ts';
import type {Binder} from '../model/binder.ts';

/** What a rule says of one fault; the runner adds the rule's id and severity. */
export interface Fault extends Omit<Finding, 'rule' | 'severity'> {
  /** `info` keeps a fault from weighing more, whatever the rule's severity: the item is not finished yet. */
  readonly atMost?: 'info' | undefined;
}

/** A tolerance that the syllabus or binder file may set beside the rule's severity. */
interface RuleOption {
  readonly default: number;
  /** What the number is, with its unit. */
  readonly meaning: string;
}

/** One law about the binder. It finds and reports; it never changes the binder and never reads a file. */
export interface Rule<OptionName extends string = never> {
  /** Permanent; equal to the file name. */
  readonly id: string;
  /** The law as a sentence, without a full stop. */
  readonly summary: string;
  readonly severity: Severity;
  readonly options?: Readonly<Record<OptionName, RuleOption>>;
  check(binder: Binder, report: (fault: Fault) => void, options: Readonly<Record<OptionName, number>>): void;
}
