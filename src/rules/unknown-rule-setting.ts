import type {Binder} from '../model/binder.ts';
import {readingRules} from '../model/reading-rules.ts';
import {nearestName} from '../support/nearest-name.ts';
import type {Fault, Rule} from './define-rule.ts';

/**
 * The settings under `rules` name rules that exist, and tolerances that those rules have.
 *
 * Why: a misspelt id would leave the rule as it was, without a word.
 *
 * Example: `rules: {gauge-spred: off}` in the binder file or the syllabus, or a misspelt `tolerance`.
 */
export const unknownRuleSetting = (others: readonly Rule[]): Rule => {
  const rule: Rule = {
    id: 'unknown-rule-setting',
    summary: 'the settings under `rules` name rules that exist, and tolerances that those rules have',
    severity: 'error',
    check(binder, report) {
      const rules: readonly Rule<string>[] = [...others, rule];
      const ids = [...rules, ...readingRules].map(({id}) => id);
      for (const [id, setting] of Object.entries(binder.ruleSettings)) {
        if (!ids.includes(id)) {
          report({...settingKey(binder, [id]), ...describeUnknownId(id, ids)});
          continue;
        }
        const options = rules.find((known) => known.id === id)?.options ?? {};
        for (const [name, value] of typeof setting === 'object' ? Object.entries(setting) : []) {
          const option = options[name];
          const isFine = name === 'severity' || (option && typeof value === 'number' && value >= 0);
          if (isFine) continue;
          report({
            ...settingKey(binder, [id, name]),
            message: option
              ? `\`${name}\` of \`${id}\` is not a number of 0 or more`
              : `\`${id}\` has no setting \`${name}\``,
            hint: option
              ? `Write a number: ${option.meaning}.`
              : `Its settings are ${['severity', ...Object.keys(options)].map((known) => `\`${known}\``).join(' and ')}.`,
            actual: name,
            ...(option ? {} : {expected: ['severity', ...Object.keys(options)]}),
          });
        }
      }
    },
  };
  return rule;
};

function describeUnknownId(id: string, ids: readonly string[]): Omit<Fault, 'file' | 'place'> {
  const nearest = nearestName(id, ids);
  return {
    message: `no rule is called \`${id}\``,
    hint: nearest ? `Write \`${nearest}\` if that is meant.` : 'Take it out; `explain` lists the rules.',
    actual: id,
    ...(nearest === null ? {} : {expected: [nearest]}),
  };
}

/** The binder file's settings stand over the syllabus's, so the binder file is looked at first. */
function settingKey({settingsFile, settingsPlaces, syllabus}: Binder, path: readonly string[]) {
  const whole = ['rules', ...path];
  return settingsPlaces.has(whole)
    ? {file: settingsFile, place: settingsPlaces.key(whole)}
    : {file: syllabus.file, place: syllabus.places.key(whole)};
}
