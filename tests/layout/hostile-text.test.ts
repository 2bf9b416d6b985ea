import type {Root} from 'hast';
import rehypeParse from 'rehype-parse';
import {unified} from 'unified';
import {visit} from 'unist-util-visit';
import {expect, test} from 'vitest';
import type {LayoutInput} from '../../src/layout/layout-input.ts';
import type {Printable} from '../../src/layout/printable.ts';
import {renderBinder} from '../../src/layout/render-binder.ts';
import {renderCheckReport} from '../../src/layout/render-check-report.ts';
import {renderInserts} from '../../src/layout/render-inserts.ts';
import {renderLetter} from '../../src/layout/render-letter.ts';
import {renderPackingList} from '../../src/layout/render-packing-list.ts';
import {renderReprint} from '../../src/layout/render-reprint.ts';
import {envelopeDocuments, renderRoundEnvelope} from '../../src/layout/render-round-envelope.ts';
import {renderTags} from '../../src/layout/render-tags.ts';
import {layoutInput} from './layout-case.ts';

const parser = unified().use(rehypeParse).freeze();
const attack =
  '</style></title>"><script>alert(1)</script><img src=x onerror=alert(2)>\' onload="x" {{this}} {{{x}}}';

/** A binder in which every text that a candidate or assessor can write is the same attack. */
function hostileInput(): LayoutInput {
  const knitted = {
    title: attack,
    yarn: {name: attack, fibre: attack, colour: attack, 'dye-lot': attack},
    needles: [attack],
    photos: [],
  };
  const worked = {
    ...knitted,
    'cast-on': attack,
    'bind-off': attack,
    blocking: attack,
    rework: [{round: 1, done: attack}],
  };
  const composed = {
    techniques: [{name: attack, note: attack}],
    photos: [
      [
        {
          source: 'data:image/png;base64,AAAA',
          description: attack,
          widthMillimetres: 80,
          heightMillimetres: 60,
          taken: null,
          scaleBar: null,
        },
      ],
    ],
  };
  const kinds = ['swatch', 'pattern', 'project', 'question', 'report', 'review', 'letter'];
  const fields: Readonly<Record<string, object>> = {
    swatch: worked,
    project: {...worked, for: attack, 'yarn-used': attack},
    pattern: {...knitted, notions: [attack], sizes: [{name: attack}]},
    question: {title: attack},
    report: {title: attack},
    review: {title: attack},
    letter: {title: attack, to: [attack], salutation: attack, closing: attack},
  };
  const ids = kinds.map((_, index) => `A-${index}`);
  const requirements = kinds.map((kind, index) => ({
    id: ids[index],
    kind,
    title: attack,
    asks: attack,
    'tied-to': ['A-0'],
  }));
  return layoutInput({
    settings: {
      candidate: {name: attack, number: attack, address: [attack], email: attack},
      certificate: {name: attack, part: attack, guild: attack, address: [attack]},
      date: '2026-09-28',
      inserts: {
        spine: {width: '50 mm', height: '200 mm'},
        cover: true,
        tabs: {width: '50 mm', height: '13 mm'},
      },
    },
    sections: [
      {
        title: attack,
        tab: attack,
        requirements: [...requirements, {id: 'A-99', kind: 'swatch', title: attack, asks: attack}],
      },
    ],
    items: kinds.map((kind, index) => ({
      'front-matter': {requirement: ids[index] ?? '', status: 'finished', ...fields[kind]},
      composed,
    })),
    assessments: [
      {round: 0, received: '2026-09-14', from: attack, results: {'A-0': {result: 'rework', remark: attack}}},
    ],
    findings: [
      {message: `\`${attack}\``, hint: attack, file: attack},
      {file: 'content/A-0.md', message: attack, rule: attack},
    ],
    draft: 3,
  });
}

const input = hostileInput();
const documents: readonly (readonly [string, Printable | null])[] = [
  ['binder', renderBinder(input, null)],
  ['tags', renderTags(input)],
  ['inserts', renderInserts(input)],
  ['letter', renderLetter(input, null)],
  ['packing list', renderPackingList(input, null)],
  ['check report', renderCheckReport(input)],
  ['reprint', renderReprint(input, ['A-0', 'A-2', 'A-3'], null)],
  ...envelopeDocuments.map(
    (document) => [`round ${document}`, renderRoundEnvelope(input, document, input.binder.items, 1)] as const,
  ),
];

test.each(documents)('in the %s hostile text stays text wherever it stands', (_, printable) => {
  const root: Root = parser.parse(printable?.html ?? '');
  let shown = '';
  let attributes = 0;
  visit(root, (node) => {
    if (node.type === 'text') shown += node.value;
    if (node.type !== 'element') return;
    expect(['script', 'iframe', 'object', 'embed', 'base', 'link']).not.toContain(node.tagName);
    for (const [name, value] of Object.entries(node.properties)) {
      expect(name).not.toMatch(/^on/i);
      if (node.tagName === 'img' && name === 'src') expect(value).toBe('data:image/png;base64,AAAA');
      attributes++;
    }
  });
  expect(shown).toContain('<script>alert(1)</script>');
  expect(attributes).toBeGreaterThan(10);
  // The policy, the character set and the view port stand before anything of the candidate's; the style sheet ends where ours does.
  expect(printable?.html.match(/<\/style>/g)).toHaveLength(1);
  expect(printable?.html.match(/<\/title>/g)).toHaveLength(1);
});
