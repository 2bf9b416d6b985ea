import {expect, test} from 'vitest';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import type {PageCounts, Printable} from '../../src/layout/printable.ts';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {renderCheckReport} from '../../src/layout/render-check-report.ts';
import {renderInserts} from '../../src/layout/render-inserts.ts';
import {renderLetter} from '../../src/layout/render-letter.ts';
import {renderPackingList} from '../../src/layout/render-packing-list.ts';
import {renderReprint} from '../../src/layout/render-reprint.ts';
import {envelopeDocuments, renderRoundEnvelope} from '../../src/layout/render-round-envelope.ts';
import {renderSelfCheck} from '../../src/layout/render-self-check.ts';
import {renderTags} from '../../src/layout/render-tags.ts';
import {workedExample} from '../support/worked-example.ts';

const inserts = `inserts:
  spine: {width: 50 mm, height: 250 mm}
  cover: true
  tabs: {width: 30 mm, height: 12 mm}
`;
const input = await workedExample((settings) => settings.replace(/^inserts:\n(?: .*\n)+/m, '') + inserts);
const letter = [...input.composed.values()].find(({item}) => item.kind === 'letter');
/** The same binder with a second letter, whose leaves say how many there are. */
const twoLetters: LayoutInput = {
  ...input,
  composed: new Map([
    ...input.composed,
    ...(letter ? [['L-99', {...letter, item: {...letter.item, id: 'L-99'}}] as const] : []),
  ]),
};
const id = [...input.composed.keys()][3] ?? '';

type Make = (counts: PageCounts) => Printable | null;
const documents: readonly (readonly [name: string, usesCounts: boolean, make: Make])[] = [
  ['binder', true, (counts) => renderBinder(input, counts)],
  ['reprint', true, (counts) => renderReprint(input, [id], counts)],
  ['two letters', true, (counts) => renderLetter(twoLetters, counts)],
  ['letter', false, (counts) => renderLetter(input, counts)],
  ['inserts', false, () => renderInserts(input)],
  ['tags', false, () => renderTags(input)],
  ['self-check', false, () => renderSelfCheck(input)],
  ['packing list', false, () => renderPackingList(input, null)],
  ['check report', false, () => renderCheckReport(input)],
  ...envelopeDocuments.map(
    (name) => [`round, ${name}`, false, () => renderRoundEnvelope(input, name, [], 1)] as const,
  ),
];

test.each(documents)('%s: says how many pages its sheets take: %s', (_, usesCounts, make) => {
  const draft = make(null);
  if (draft === null) throw new Error('the worked example has this document');
  expect(draft.usesCounts).toBe(usesCounts);
  const counts = new Map(draft.sheets.map(({anchor}, index) => [anchor, 3 + (index % 2)]));
  expect(make(counts)?.html === draft.html).toBe(!usesCounts);
});
