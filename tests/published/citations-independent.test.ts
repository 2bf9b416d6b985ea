import {Driver} from '@citeproc-rs/wasm';
import {beforeAll, describe, expect, test} from 'vitest';
import {type CitationEngine, createCitationEngine} from '../../src/references/citation-engine.ts';
import {loadCitationLocale} from '../../src/references/citation-locale.ts';
import {loadCitationStyle} from '../../src/references/citation-style.ts';
import type {Source} from '../../src/references/source.ts';
import {toCslItem} from '../../src/references/to-csl-item.ts';
import {cluster} from '../references/clusters.ts';
import data from './data/works.json' with {type: 'json'};

// citeproc-rs is a CSL processor written anew in Rust; it shares the style and the locale with ours, and no code.
// It reads CSL 1.0.1, so it refuses the author–date and the numeric style, which are written in CSL 1.0.2. The works are
// invented; only what the two processors make of them is compared.

// JSON widens `type` to string; `sourceTypes` is checked by the library's schema, not here.
const works = data as unknown as readonly Source[];

/** Works on which the two differ, and which of the two follows the style guide. */
const differing: Readonly<Record<string, string>> = {
  ashdown2011b: 'theirs sets `without` in a title in lower case (Chicago 17, 8.159: only if unstressed)',
  rtl: 'theirs loses the space and the comma between names in Hebrew letters',
};
const compared = works.filter(({id}) => !(id in differing));

let engine: CitationEngine;
let driver: Driver;

beforeAll(async () => {
  const locale = await loadCitationLocale('en-US');
  engine = await createCitationEngine({style: 'note', language: 'en-US', sources: works});
  driver = new Driver({
    style: await loadCitationStyle('note'),
    format: 'html',
    formatOptions: {linkAnchors: false},
    localeOverride: 'en-US',
    fetcher: {fetchLocale: async () => locale},
  });
  await driver.fetchLocales();
  for (const work of works) {
    const {system_id, ...item} = toCslItem(work, work.id, 'note');
    expect(system_id).toBe(work.id);
    driver.insertReferences([item]);
  }
});

/** Without links and with one way of escaping: what the two write differently without meaning it. */
function comparable(html: string): string {
  return html
    .replace(/<\/?a\b[^>]*>/g, '')
    .replaceAll('&#38;', '&')
    .replaceAll('&amp;', '&');
}

test('48 works of 18 types are compared, 46 are equal', () => {
  expect(works).toHaveLength(48);
  expect(new Set(works.map(({type}) => type)).size).toBe(18);
  expect(compared).toHaveLength(46);
});

describe('Chicago notes and bibliography', () => {
  test('the bibliography', () => {
    driver.includeUncited('All');
    const theirs = new Map(driver.makeBibliography().map(({id, value}) => [id, comparable(value)]));
    const ours = new Map(
      engine.renderBibliography(works.map(({id}) => id)).map(({key, html}) => [key, comparable(html)]),
    );
    for (const {id} of compared) expect(ours.get(id)).toBe(theirs.get(id));
    for (const id of Object.keys(differing)) expect(ours.get(id)).not.toBe(theirs.get(id));
    // Without the names that theirs writes differently, the order is the same.
    const order = (entries: ReadonlyMap<string, string>) =>
      [...entries.keys()].filter((id) => !(id in differing));
    expect(order(ours)).toEqual(order(theirs));
    driver.includeUncited('None');
  });

  test.each([
    ['page', '57'],
    ['page', '112–114'],
    ['chapter', '3'],
    ['figure', '2'],
    ['paragraph', '12'],
    ['section', '4'],
    ['volume', '2'],
  ] as const)('full notes with a locator: %s %s', (label, value) => {
    const theirs = renderTheirs(compared.map(({id}) => ({id, label, locator: value})));
    const locator = {label, value};
    const ours = engine.renderItem(
      compared.map(({id}) => {
        const [citation] = cluster(`@${id}`).citations;
        if (citation === undefined) throw new Error(`no citation of ${id}`);
        return {inText: false, citations: [{...citation, locator}]};
      }),
    );
    expect(ours.notes.map(comparable)).toEqual(theirs);
  });

  test('every work cited three times: in full, at once again, and after another', () => {
    const cites = compared.flatMap(({id}, index) => {
      const other = compared[(index + 1) % compared.length]?.id ?? id;
      return [`@${id}, 5`, `@${id}, 6`, `@${other}`, `@${id}, 7`];
    });
    const ours = engine.renderItem(cites.map((text) => cluster(text))).notes.map(comparable);
    const theirs = renderTheirs(
      cites.map((text) => {
        const [, id = '', locator] = /^@([^,]+)(?:, (.*))?$/.exec(text) ?? [];
        return locator === undefined ? {id} : {id, label: 'page', locator};
      }),
    );
    expect(ours).toEqual(theirs);
  });
});

interface TheirCite {
  readonly id: string;
  readonly label?: string;
  readonly locator?: string;
}

function renderTheirs(cites: readonly TheirCite[]): readonly string[] {
  driver.initClusters(cites.map((cite, index) => ({id: `note${index}`, cites: [cite]})));
  driver.setClusterOrder(cites.map((_, index) => ({id: `note${index}`, note: index + 1})));
  return cites.map((_, index) => comparable(driver.builtCluster(`note${index}`)));
}
