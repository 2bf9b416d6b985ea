import {expect, test} from 'vitest';
import {troubleFindings} from '../../src/commands/trouble-findings.ts';
import type {Sheet} from '../../src/layout/printable.ts';
import type {PrintTrouble} from '../../src/print/print-job.ts';
import {checkCase} from '../support/read-case.ts';
import {textAt} from '../support/text-at.ts';

const base = 'tests/rules/base';
const ofTag = 'Shorten what is named, or make the tag larger: `tags` in `content/binder.yaml`.';
const usual = 'Break or shorten what is named.';

/** Settings and a title of their own, so that each has a place to be told at. */
async function caseWithTags() {
  return checkCase([base], (text) => {
    if (text.startsWith('candidate:'))
      return `${text}tags: {width: 60 mm}\ninserts: {cover: true, spine: {width: 4 cm, height: 20 cm}, tabs: {width: 5 cm, height: 1 cm}}\n`;
    if (text.includes('requirement: S-01'))
      return text.replace('requirement: S-01', 'requirement: S-01\ntitle: Edge');
    return text.replace('- title: Questions', '- title: Questions\n    tab: Answers');
  });
}

test.each([
  ['Tags', 'tag-of-S-01', 'content/swatches/s-01.md', 'Edge', ofTag],
  ['Tags', 'reverse-of-tag-S-01', 'content/swatches/s-01.md', 'Edge', ofTag],
  ['S-01 tag', 'tag-of-S-01', 'content/swatches/s-01.md', 'Edge', ofTag],
  ['S-01', 'sheet-S-01', 'content/swatches/s-01.md', '', usual],
  ['Tags', null, 'content/binder.yaml', '{width: 60 mm}', usual],
  ['Spine', 'sheet-spine', 'content/binder.yaml', '{width: 4 cm, height: 20 cm}', usual],
  ['Cover', 'sheet-cover', 'content/binder.yaml', 'true', usual],
  ['Tab strips', 'sheet-tab-strips', 'content/binder.yaml', '{width: 5 cm, height: 1 cm}', usual],
  ['Tab 1', 'tab-1', 'content/syllabus.yaml', 'Swatches', usual],
  ['Tab 2', 'tab-2', 'content/syllabus.yaml', 'Answers', usual],
  ['Contents', 'sheet-contents', 'content/binder.yaml', '', usual],
])('what does not fit on `%s`, in %s, is told in %s at `%s`', async (label, within, file, text, hint) => {
  const {binder, textOf} = await caseWithTags();
  if (binder === null) throw new Error('the base case has a binder');
  const sheet: Sheet = {anchor: 'here', label, title: '', blank: false};
  const trouble: PrintTrouble = {kind: 'overflow', anchor: 'here', within, detail: '`purl` is 3 mm too tall'};
  const [finding, ...others] = troubleFindings(binder, [sheet], [trouble]);
  expect(others).toEqual([]);
  if (finding === undefined) throw new Error('a trouble is a finding');
  expect(finding).toMatchObject({rule: 'printed-page', severity: 'error', file, hint});
  expect(finding.message).toBe(`on leaf \`${label}\`: does not fit: \`purl\` is 3 mm too tall`);
  expect(textAt(textOf(file) ?? '', finding.place)).toBe(text);
});
