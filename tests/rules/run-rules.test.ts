import {expect, test} from 'vitest';
import {type Finding, fileStart} from '../../src/diagnostics/finding.ts';
import type {Binder} from '../../src/model/binder.ts';
import type {Fault, Rule} from '../../src/rules/define-rule.ts';
import {runRules} from '../../src/rules/run-rules.ts';
import {sampleBinder} from '../support/sample-binder.ts';

const fault: Fault = {file: 'content/a.md', place: fileStart, message: 'the sky is `grey`', hint: 'Wait.'};
const greySky: Rule = {
  id: 'grey-sky',
  summary: 'the sky is blue',
  severity: 'warning',
  check: (_, report) => report(fault),
};

function binderWith(ruleSettings: Binder['ruleSettings'], readFindings: readonly Finding[] = []): Binder {
  return {...sampleBinder({items: []}), ruleSettings, readFindings};
}

const shown = (findings: readonly Finding[]) => findings.map(({rule, severity}) => `${severity} ${rule}`);

test.each([
  ['the rule itself', {}, ['warning grey-sky']],
  ['a word', {'grey-sky': 'error'}, ['error grey-sky']],
  ['a group', {'grey-sky': {severity: 'info'}}, ['info grey-sky']],
  ['a group without a severity', {'grey-sky': {}}, ['warning grey-sky']],
  ['off', {'grey-sky': 'off'}, []],
  ['off in a group', {'grey-sky': {severity: 'off'}}, []],
] as const)('the severity comes from %s', (_, settings, expected) => {
  expect(shown(runRules(binderWith(settings), [greySky]))).toEqual(expected);
});

test('a fault that weighs at most as information stays so whatever is set', () => {
  const lenient: Rule = {...greySky, check: (_, report) => report({...fault, atMost: 'info'})};
  const findings = runRules(binderWith({'grey-sky': 'error'}), [lenient]);
  expect(findings).toEqual([{...fault, rule: 'grey-sky', severity: 'info'}]);
  expect(runRules(binderWith({'grey-sky': 'off'}), [lenient])).toEqual([]);
});

test.each([
  [{}, 8],
  [{'grey-sky': {clouds: 5}}, 5],
  [{'grey-sky': {clouds: 'many'}}, 8],
  [{'grey-sky': {clouds: -1}}, 8],
  [{'grey-sky': 'info'}, 8],
] as const)('tolerances set as %j reach the rule as %i', (settings, expected) => {
  const seen: number[] = [];
  const cloudy: Rule<'clouds'> = {
    ...greySky,
    options: {clouds: {default: 8, meaning: 'eighths of the sky'}},
    check: (_, __, {clouds}) => void seen.push(clouds),
  };
  runRules(binderWith(settings), [cloudy]);
  expect(seen).toEqual([expected]);
});

test('what reading found comes along, with the severity set for it, in one order with the rest', () => {
  const found: Finding = {...fault, rule: 'yaml-syntax', severity: 'error', place: {...fileStart, line: 9}};
  const earlier: Finding = {...found, rule: 'unknown-field', file: 'content/B.md'};
  const hidden: Finding = {...found, rule: 'citation-form'};
  const settings = {'unknown-field': 'info', 'citation-form': 'off'} as const;
  expect(shown(runRules(binderWith(settings, [found, earlier, hidden]), [greySky]))).toEqual([
    'info unknown-field',
    'warning grey-sky',
    'error yaml-syntax',
  ]);
});

test('a rule that throws is our bug and is not turned into a finding', () => {
  const broken: Rule = {
    ...greySky,
    check() {
      throw new Error('bug: no sky');
    },
  };
  expect(() => runRules(binderWith({}), [broken])).toThrow('bug: no sky');
});
