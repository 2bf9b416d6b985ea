import {basename, dirname} from 'node:path';
import {expect, test} from 'vitest';
import type {Finding} from '../../src/diagnostics/finding.ts';
import {formatText} from '../../src/diagnostics/format-text.ts';
import {casesIn} from '../support/cases.ts';
import {expectFolder} from '../support/expect-folder.ts';
import {type CheckedCase, checkCase} from '../support/read-case.ts';

// A case is a folder `<rule-id>/<case>` whose `content` lies over that of `base`, a small binder without a finding; so
// the report, which shows everything found, shows what the case changed. Beside `content` there may be `photos.yaml`
// (what a decoder would find, by name) and `today.txt`.
//
// The name of a case says what it shows: `passing…` has no finding of the rule; `failing…` is one mistake and has one
// finding in all; any other name has at least one of the rule.
const base = 'tests/rules/base';
const cases = casesIn('tests/rules').filter(({folder}) => dirname(folder) !== base);
test('the binder below all cases has nothing to report', async () => {
  expect((await checkCase([base])).findings).toEqual([]);
});

test.each(cases)('$name', async ({name, folder, expected}) => {
  const checked = await checkCase([base, folder]);
  expectFolder(expected, {'report.txt': formatText(checked.findings, checked.textOf)});
  expectActualAtPlace(checked);

  const rules = checked.findings.map((finding) => finding.rule);
  if (basename(name).startsWith('passing')) return expect(rules).not.toContain(dirname(name));
  if (basename(name).startsWith('failing')) expect(rules).toEqual([dirname(name)]);
  else expect(rules).toContain(dirname(name));

  // As an editor on Windows saves it, the same is found at the same places.
  const windows = await checkCase([base, folder], (text) => `\uFEFF${text.replaceAll('\n', '\r\n')}`);
  expect(windows.findings).toEqual(checked.findings);
  expectActualAtPlace(windows);
});

function expectActualAtPlace(checked: CheckedCase): void {
  for (const finding of checked.findings) {
    if (finding.actual !== undefined) expect(textAtPlace(finding, checked)).toBe(finding.actual);
  }
}

function textAtPlace({file, place}: Finding, {textOf}: CheckedCase): string {
  const lines = (textOf(file) ?? '').replace(/^\uFEFF/, '').split(/\r\n|\n/);
  const first = (lines[place.line - 1] ?? '').slice(
    0,
    place.line === place.endLine ? place.endColumn - 1 : undefined,
  );
  if (place.line === place.endLine) return first.slice(place.column - 1);
  const last = (lines[place.endLine - 1] ?? '').slice(0, place.endColumn - 1);
  return [first.slice(place.column - 1), ...lines.slice(place.line, place.endLine - 1), last].join('\n');
}
