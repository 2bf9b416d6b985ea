import {readFileSync} from 'node:fs';
import {readingRules} from '../model/reading-rules.ts';
import {rules} from '../rules/index.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {UsageError} from '../support/usage-error.ts';
import {importedFileRule} from './import-findings.ts';
import {printedPageRule} from './trouble-findings.ts';

/** Id, law and severity of everything that can be found, in the order of the documentation. */
export function describeRules() {
  return [...readingRules, ...rules, printedPageRule, importedFileRule].map(({id, summary, severity}) => ({
    id,
    summary,
    severity,
  }));
}

/** The law behind a rule, why it is one, an example and what can be set; without an id, a list. Throws `UsageError` for an unknown id. */
export function explainRule(id: string | null): string {
  if (id === null) {
    const width = Math.max(...describeRules().map((rule) => rule.id.length));
    return `${describeRules()
      .map((rule) => `${rule.id.padEnd(width)}  ${rule.severity.padEnd(7)}  ${rule.summary}`)
      .join('\n')}\n`;
  }
  const reading = [...readingRules, printedPageRule, importedFileRule].find((rule) => rule.id === id);
  if (reading) return page(reading, `${capital(reading.summary)}.\n\n${reading.explanation}`, []);
  const rule = rules.find((candidate) => candidate.id === id);
  if (rule) return page(rule, lawOf(id), Object.entries(rule.options ?? {}));
  const near = nearestName(
    id,
    describeRules().map((known) => known.id),
  );
  throw new UsageError(
    `there is no rule \`${id}\`${near ? `; did you mean \`${near}\`?` : '; `explain` alone lists them all'}`,
  );
}

function page(
  {id, severity}: {readonly id: string; readonly severity: string},
  explanation: string,
  options: readonly [string, {readonly default: number; readonly meaning: string}][],
): string {
  const settings = options.map(([name, option]) => `  ${name}: ${option.default}   # ${option.meaning}`);
  const names = englishList(['severity', ...options.map(([name]) => name)]);
  return [
    `${id} (${severity})`,
    '',
    explanation,
    '',
    `In content/binder.yaml or content/syllabus.yaml, under \`rules:\`, ${names} can be set:`,
    `${id}:`,
    `  severity: ${severity}   # off, info, warning or error`,
    ...settings,
    '',
  ].join('\n');
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** The doc comment above a rule is its documentation; compiling keeps it beside the program. */
function lawOf(id: string): string {
  const ending = import.meta.url.endsWith('.ts') ? 'ts' : 'js';
  const source = readFileSync(new URL(`../rules/${id}.${ending}`, import.meta.url), 'utf8');
  const comment = /\/\*\*([\s\S]*?)\*\/\s*export const/.exec(source)?.[1] ?? '';
  return comment.replace(/^\s*\* ?/gm, '').trim();
}
