import CSL from 'citeproc';
import type {CitationCluster} from '../references/citation.ts';
import {createCitationEngine} from '../references/citation-engine.ts';
import {loadCitationLocale} from '../references/citation-locale.ts';
import {type CitationStyle, loadCitationStyle} from '../references/citation-style.ts';
import type {Source} from '../references/source.ts';
import {toCslItem} from '../references/to-csl-item.ts';
import type {BenchRow} from './bench-record.ts';
import {inTurn, ratioRow, timeWork} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

const sourceCount = 300;
const itemCount = 100;
const citationsPerItem = 10;

const types = ['book', 'article-journal', 'webpage', 'chapter'] as const;
const sources: readonly Source[] = Array.from({length: sourceCount}, (_, index) => ({
  id: String(index),
  type: types[index % types.length] ?? 'book',
  title: `Work ${index} of many`,
  author: [{family: `Author${index % 120}`, given: 'Ann Beth'}],
  issued: {'date-parts': [[1980 + (index % 40)]]},
  publisher: 'Press',
  'publisher-place': 'Town',
  page: '10-40',
  'container-title': 'Gathered Works',
}));
const items: readonly (readonly CitationCluster[])[] = Array.from({length: itemCount}, (_, item) =>
  Array.from({length: citationsPerItem}, (_, place) => ({
    inText: false,
    citations: [
      {
        key: String((item * 7 + place * 13) % sourceCount),
        locator: {label: 'page', value: String(place + 5)},
        prefix: '',
        suffix: '',
        suppressAuthor: false,
        span: {start: 0, end: 0},
        keySpan: {start: 0, end: 0},
      },
    ],
  })),
);

/** 300 sources and 1,000 citations in 100 items with their lists and the full list, against one bare run of the processor over the same clusters. */
export async function benchCitations({runs}: BenchWorld): Promise<readonly BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const style of ['author-date', 'note', 'numeric'] as const) {
    // The first of each loads and compiles.
    await ownRun(style);
    await bareRun(style);
    const {own, bare} = await inTurn(runs, {
      bare: () => timeWork(() => bareRun(style)),
      own: () => timeWork(() => ownRun(style)),
    });
    const words = {id: `citations-${style}`, what: `1,000 citations of 300 sources, ${style}`, target: 2};
    rows.push(ratioRow({...words, against: 'one bare run of the citation processor'}, own, bare));
  }
  return rows;
}

async function ownRun(style: CitationStyle): Promise<void> {
  const engine = await createCitationEngine({style, language: 'en-GB', sources});
  for (const clusters of items) engine.renderItem(clusters);
  engine.renderBibliography(sources.map(({id}) => id));
}

async function bareRun(style: CitationStyle): Promise<void> {
  const [xml, locale] = await Promise.all([loadCitationStyle(style), loadCitationLocale('en-GB')]);
  const system = {
    retrieveLocale: () => locale,
    retrieveItem: (id: string) => toCslItem(sources[Number(id)] ?? {id, type: 'book'}, id, style),
    embedBibliographyEntry: () => '',
  };
  const processor = new CSL.Engine(system, xml, 'en-GB', true);
  const clusters = items.flat().map(({citations}, index) => ({
    citationID: String(index),
    citationItems: citations.map(({key, locator}) => ({
      id: key,
      label: 'page',
      locator: locator?.value ?? '',
    })),
    properties: {noteIndex: style === 'note' ? index + 1 : 0},
  }));
  processor.rebuildProcessorState(clusters, 'html', []);
  processor.makeBibliography();
}
