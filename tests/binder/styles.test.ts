import {expect, test} from 'vitest';
import {composeBinder} from '../../src/compose/compose-binder.ts';
import {checkCase} from '../support/read-case.ts';

const base = 'tests/rules/base';

/** The pages' text of the small binder of the rules' cases, citations and lists taken out when asked. */
async function composed(setting: string, folders: readonly string[] = []) {
  const {binder} = await checkCase([base, ...folders], (text) =>
    text.startsWith('candidate:') ? `${text}\n${setting}\n` : text,
  );
  if (!binder) throw new Error('the base case has a binder');
  const {items, references, findings} = await composeBinder(binder, new Map());
  return {findings, references, items: [...items.values()]};
}

test('another style changes every citation and list, and nothing else', async () => {
  const [authorDate, note, numeric] = await Promise.all(
    ['author-date', 'note', 'numeric'].map((style) => composed(`citation-style: ${style}`)),
  );
  if (!authorDate || !note || !numeric) throw new Error('three styles were asked for');
  for (const other of [note, numeric]) {
    for (const [index, item] of authorDate.items.entries()) {
      const same = other.items[index];
      if (!same) throw new Error('the same items are composed');
      for (const [which, technique] of item.techniques.entries())
        expect(same.techniques[which]?.citations).not.toBe(technique.citations);
      if (item.item.body.clusters.length > 0) expect(same.body).not.toBe(item.body);
      expect(withoutCitations(same.body)).toBe(withoutCitations(item.body));
      if (item.references !== null) expect(same.references).not.toBe(item.references);
      for (const part of ['gauge', 'size', 'attempts', 'photos'] as const)
        expect(same[part]).toEqual(item[part]);
    }
    expect(other.references.map(({key, usedIn}) => [key, usedIn])).toEqual(
      authorDate.references.map(({key, usedIn}) => [key, usedIn]),
    );
  }
});

/** Without what each style puts for a citation of the base binder: a name and year, a raised number, a number. */
function withoutCitations(html: string): string {
  return html.replace(/\s*(?:<sup[^>]*>.*?<\/sup>|\(\d+, p\.[^)]*\)|\((?:Ashdown|Lunde)[^)]*\))/g, '');
}

test('a style that the processor chokes on is a finding, and the usual one is used', async () => {
  const {findings, references} = await composed('csl: broken.csl', ['tests/references/broken-style']);
  expect(findings).toMatchObject([{rule: 'citation-style', file: 'content/binder.yaml', place: {line: 12}}]);
  expect(references.length).toBeGreaterThan(0);
});
