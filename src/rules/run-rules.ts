import {asWritten} from '../diagnostics/as-written.ts';
import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {Binder} from '../model/binder.ts';
import type {RuleSetting} from '../model/schema/binder-settings.ts';
import type {Fault, Rule} from './define-rule.ts';

/**
 * Runs every rule that is not set to `off` and stamps its id and severity on what it reports. What was found while
 * reading comes along, with the severities set for it, so that the result is everything there is to say. Sorted by
 * file, line, column and rule. A rule that throws is our bug: the error goes on.
 */
export function runRules(binder: Binder, rules: readonly Rule[]): readonly Finding[] {
  const findings = binder.readFindings.flatMap((finding) =>
    restamp(finding, binder.ruleSettings[finding.rule]),
  );
  for (const rule of rules) {
    const setting = binder.ruleSettings[rule.id];
    const report = ({atMost, ...fault}: Fault) => {
      const finding = {...fault, rule: rule.id, severity: rule.severity};
      findings.push(
        ...restamp(finding, setting).map((stamped) => ({...stamped, severity: atMost ?? stamped.severity})),
      );
    };
    if (severityIn(setting) !== 'off') rule.check(binder, report, optionsOf(rule, setting));
  }
  return sortFindings(findings);
}

function restamp(finding: Finding, setting: RuleSetting | undefined): readonly Finding[] {
  const severity = severityIn(setting) ?? finding.severity;
  return severity === 'off' ? [] : [asWritten({...finding, severity})];
}

function severityIn(setting: RuleSetting | undefined) {
  return typeof setting === 'string' ? setting : setting?.severity;
}

/** The rule's own numbers, with those of the setting over them; what is no number is `unknown-rule-setting`'s to say. */
function optionsOf(rule: Rule<string>, setting: RuleSetting | undefined): Readonly<Record<string, number>> {
  const options = Object.entries(rule.options ?? {}).map(([name, option]) => {
    const set = typeof setting === 'object' ? setting[name] : undefined;
    return [name, typeof set === 'number' && set >= 0 ? set : option.default] as const;
  });
  return Object.fromEntries(options);
}
