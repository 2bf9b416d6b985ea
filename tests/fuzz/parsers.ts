import {isDeepStrictEqual} from 'node:util';
import {appendToLedger, readLedger} from '../../src/commands/ledger-file.ts';
import {appendToLibrary, readLibraryFile} from '../../src/commands/library-file.ts';
import {splitIds} from '../../src/commands/words/split-ids.ts';
import {splitSheets} from '../../src/commands/words/split-sheets.ts';
import {chartOfRows} from '../../src/knitting/chart/chart-of-rows.ts';
import {
  bobbinCounts,
  colourShares,
  crowdedRows,
  longFloats,
  neighbourContrasts,
} from '../../src/knitting/chart/colour-facts.ts';
import {gridToRows} from '../../src/knitting/chart/grid-to-rows.ts';
import {readChart} from '../../src/knitting/chart/read-chart.ts';
import {writeChart} from '../../src/knitting/chart/write-chart.ts';
import {parseNeedleSize} from '../../src/knitting/needle-size.ts';
import {readPiece} from '../../src/knitting/pieces/read-piece.ts';
import {workPiece} from '../../src/knitting/pieces/work-piece.ts';
import {writePieceRows} from '../../src/knitting/pieces/write-piece-rows.ts';
import {parseGaugeCount, parseLength, parsePutUp} from '../../src/knitting/quantity.ts';
import {nameSlips} from '../../src/knitting/rows/name-slips.ts';
import {proveForEveryMultiple} from '../../src/knitting/rows/prove-for-every-multiple.ts';
import {proveRows} from '../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../src/knitting/rows/read-rows.ts';
import {usedAbbreviations} from '../../src/knitting/rows/used-abbreviations.ts';
import {writeRows} from '../../src/knitting/rows/write-rows.ts';
import {splitFrontMatter} from '../../src/markdown/front-matter.ts';
import {readClippings} from '../../src/model/clippings.ts';
import {readingFinding} from '../../src/model/reading-rules.ts';
import {parseFile} from '../../src/pipeline.ts';
import {parseCitations} from '../../src/references/citation.ts';
import {readDoi, readIsbn, readIssn} from '../../src/references/identifiers.ts';
import {chooseNew} from '../../src/references/import/choose-new.ts';
import type {ImportFormat} from '../../src/references/import/csl-record.ts';
import {decodeText} from '../../src/references/import/decode-text.ts';
import {isCitationKey} from '../../src/references/import/make-key.ts';
import {readReferences} from '../../src/references/import/read-references.ts';
import {readOwnStyle} from '../../src/references/own-style.ts';
import {UsageError} from '../../src/support/usage-error.ts';
import {readYaml} from '../../src/yaml/read-yaml.ts';
import {gauges, samplePieces} from '../knitting/pieces/sample-pieces.ts';
import {composeText} from '../markdown/compose-text.ts';
import {askTable, binderWith, tableNames} from './binder-with.ts';
import {blocks, citations, directives, fields, items, textsAt} from './corpus.ts';
import {linesOf, requireFindings, requirePlace, requireSpan, requireThat} from './laws.ts';
import type {Material} from './mutate.ts';
import * as pieces from './pieces.ts';
import * as samples from './samples.ts';

/** A reader of author text, what it is fed with, and the law that it keeps for every text. */
export interface Parser extends Material {
  readonly name: string;
  /** How many inputs it gets in the long run; together a million. */
  readonly long: number;
  /** Reads `text`; throws when the parser does, or when what it returned breaks its law. */
  read(text: string): void | Promise<void>;
}

export const parsers: readonly Parser[] = [
  {
    name: 'front matter',
    texts: items,
    pieces: [...pieces.yamlPieces, '---', '\n---\n', '---js\n', '----\n', '--- \n'],
    long: 150_000,
    read(text) {
      const content = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
      const {yaml, bodyStart, problem} = splitFrontMatter(content);
      requireThat(0 <= bodyStart && bodyStart <= content.length, `the body begins at ${bodyStart}`);
      requireThat(content.slice(0, bodyStart).includes(yaml), 'the fields are not those of the file');
      if (problem) requirePlace(problem.place, content.split('\n'), problem.message);
    },
  },
  {
    name: 'YAML',
    texts: [...fields, ...textsAt(/\.ya?ml$/)],
    pieces: pieces.yamlPieces,
    long: 30_000,
    read(text) {
      const {value, places, problems} = readYaml(text);
      const lines = linesOf(text);
      for (const {place, message} of problems) requirePlace(place, lines, message);
      const walk = (part: unknown, path: readonly (string | number)[]) => {
        requirePlace(places.value(path), lines, `value at ${path}`);
        requirePlace(places.key(path), lines, `key at ${path}`);
        if (typeof part === 'string')
          requirePlace(places.within(path, 1, part.length + 1), lines, `part of ${path}`);
        if (typeof part !== 'object' || part === null) return;
        requireThat(Array.isArray(part) || Object.getPrototypeOf(part) === null, `${path} has a prototype`);
        for (const [key, inner] of Object.entries(part))
          walk(inner, [...path, Array.isArray(part) ? Number(key) : key]);
      };
      walk(value, []);
    },
  },
  {
    name: 'item',
    texts: items,
    pieces: [...pieces.markdownPieces, ...pieces.yamlPieces, ...directives],
    long: 12_000,
    read(text) {
      const {findings, body} = parseFile({path: 'content/a.md', text});
      requireFindings(findings, () => text);
      const lines = linesOf(text);
      const {
        clusters,
        headings,
        images,
        crossReferences,
        links,
        rawHtml,
        directives: asked,
        blocks: fenced,
      } = body;
      const placed = [clusters, headings, images, crossReferences, links, rawHtml, asked, fenced].flat();
      for (const {place} of placed) requirePlace(place, lines, 'a part of the text');
      for (const {linePlaces} of fenced)
        for (const place of linePlaces) requirePlace(place, lines, 'a line of a block');
      for (const {citationPlaces} of clusters) {
        for (const {citation, key} of citationPlaces) {
          const shown = (lines[key.line - 1] ?? '').slice(key.column - 1, key.endColumn - 1);
          requireThat(shown === citation.key, `${shown} stands where the key ${citation.key} should`);
        }
      }
    },
  },
  {
    name: 'item, composed',
    texts: items.map((text) => text.replace(/^---\n[\s\S]*?\n---\n/, '')),
    pieces: pieces.markdownPieces,
    long: 6_000,
    read: (text) => void composeText(text),
  },
  {
    name: 'item in a binder',
    texts: items.map((text) => text.replace(/^requirement: ([A-Z])-\d+/m, 'requirement: $1-01')),
    pieces: [...pieces.markdownPieces, ...pieces.yamlPieces, ...directives, ...pieces.quantityPieces],
    long: 4_000,
    read: (text) => binderWith('content/swatches/s-01.md', text),
  },
  ...(
    [
      ['binder file, with label sheets', 'content/binder.yaml', textsAt(/binder\.yaml$/)],
      ['syllabus', 'content/syllabus.yaml', textsAt(/syllabus\.yaml$/)],
      ['library', 'content/library.yaml', textsAt(/library\.yaml$/)],
      ['print ledger', 'content/print-ledger.yaml', textsAt(/print-ledger\.yaml$/)],
      ['answers', 'content/assessments/round-0.yaml', textsAt(/assessments\/.*\.yaml$/)],
      ['rounds', 'content/rounds/0/sent.yaml', textsAt(/sent\.yaml$/)],
    ] as const
  ).map(
    ([name, path, texts]): Parser => ({
      name,
      texts: name.startsWith('binder')
        ? [...texts, ...samples.cutOuts.map((each) => `${texts[0]}${each}`)]
        : texts,
      pieces: [...pieces.yamlPieces, ...pieces.quantityPieces, ...fieldNames(texts)],
      long: 4_000,
      read: (text) => binderWith(path, text),
    }),
  ),
  {
    name: 'library that grows',
    texts: textsAt(/library\.yaml$/),
    pieces: pieces.yamlPieces,
    long: 4_000,
    read(text) {
      const {sources, findings} = readLibraryFile(text);
      requireFindings(findings, () => text);
      const added = [{id: 'a', type: 'book', title: 'A: "b" # c'} as const];
      const {whole} = appendToLibrary(Buffer.from(text), added, 'note');
      if (whole === null || sources === null) return;
      requireThat(
        Buffer.from(whole).toString('utf8').startsWith(Buffer.from(text).toString('utf8')),
        'text was lost',
      );
    },
  },
  {
    name: 'print ledger that grows',
    texts: textsAt(/print-ledger\.yaml$/),
    pieces: pieces.yamlPieces,
    long: 5_000,
    read(text) {
      requireFindings(readLedger(text).findings, () => text);
      const added = [
        {leaf: 'S-01 · 1 of 2', done: 'printed', on: '2026-09-28', fingerprint: '12e4'} as const,
      ];
      const whole = appendToLedger(Buffer.from(text), added);
      if (whole) requireThat(Buffer.from(whole).indexOf(Buffer.from(text)) === 0, 'text was lost');
    },
  },
  {
    name: 'clippings',
    texts: textsAt(/clippings\.md$/),
    pieces: [...pieces.clippingPieces, ...pieces.citationPieces],
    long: 150_000,
    read(text) {
      const {clippings, faults} = readClippings(text);
      requireFindings(
        faults.map((fault) => readingFinding('content/clippings.md', fault)),
        () => text,
      );
      for (const {place} of clippings) requirePlace(place, linesOf(text), 'a clipping');
    },
  },
  {
    name: 'written rows',
    texts: blocks('rows'),
    pieces: pieces.rowPieces,
    long: 10_000,
    read: readAsRows,
  },
  {
    name: 'written rows, from scratch',
    texts: pieces.rowPieces,
    pieces: pieces.rowPieces,
    long: 40_000,
    read: readAsRows,
  },
  {
    name: 'charts',
    texts: [...blocks('chart'), ...blocks('rows').slice(0, 30).flatMap(asChart)],
    pieces: pieces.chartPieces,
    long: 25_000,
    read: readAsChart,
  },
  {
    name: 'colour charts',
    texts: blocks('chart').filter((text) => /= colou?r/.test(text)),
    pieces: pieces.chartPieces,
    long: 20_000,
    read: readAsChart,
  },
  {
    name: 'pieces',
    texts: [...blocks('piece'), ...Object.values(samplePieces)],
    pieces: pieces.piecePieces,
    long: 20_000,
    read(text) {
      const {piece, problems} = readPiece(text);
      const worked = workPiece(piece, gauges.rows);
      for (const {span, message} of [...problems, ...worked.problems]) requireSpan(span, text, message);
      if (problems.length + worked.problems.length === 0) writePieceRows(worked);
    },
  },
  {
    name: 'quantities and identifiers',
    texts: [...samples.quantities, '978-1-9999991-1-7', '0317-8471', '10.1000/182'],
    pieces: pieces.quantityPieces,
    long: 210_000,
    read(text) {
      for (const parse of [
        parseLength,
        parseGaugeCount,
        parsePutUp,
        parseNeedleSize,
        readIsbn,
        readIssn,
        readDoi,
      ]) {
        const result = parse(text);
        if (!result.ok) for (const {span, message} of result.problems) requireSpan(span, text, message);
      }
    },
  },
  {
    name: 'citations and locators',
    texts: citations,
    pieces: pieces.citationPieces,
    long: 210_000,
    read(text) {
      const result = parseCitations(text);
      if (!result.ok) for (const {span, message} of result.problems) requireSpan(span, text, message);
      else {
        for (const {key, keySpan, span} of result.value) {
          requireSpan(span, text, key);
          requireThat(text.slice(keySpan.start, keySpan.end) === key, `the place of ${key}`);
        }
      }
    },
  },
  {
    name: 'attributes of directives',
    texts: directives,
    pieces: [...pieces.attributePieces, ...tableNames],
    long: 12_000,
    read: askTable,
  },
  ...(
    [
      ['bib', samples.bib],
      ['ris', samples.ris],
      ['csl-json', samples.cslJson],
    ] as const
  ).map(
    ([format, texts]): Parser => ({
      name: `import of ${format}`,
      texts,
      pieces: pieces.importPieces,
      long: 5_000,
      read: (text) => readImport(text, format),
    }),
  ),
  {
    name: 'citation styles',
    texts: textsAt(/\.csl$/),
    pieces: pieces.stylePieces,
    long: 60_000,
    read: (text) => void readOwnStyle(text),
  },
  {
    name: 'words of a command line',
    texts: ['S-07', 'tab 2', 'Title', 's-07 binder', '.', 'my-binder S-01 S-02', 'contents references'],
    pieces: ['S-07', 'tab-', '1', '-', '/', '..', '~', '.', ' '],
    long: 60_000,
    read(text) {
      for (const split of [splitIds, splitSheets]) {
        try {
          split(text.split(' '));
        } catch (error) {
          requireThat(error instanceof UsageError, String(error));
        }
      }
    },
  },
];

function fieldNames(texts: readonly string[]): readonly string[] {
  return [...new Set(texts.flatMap((text) => text.match(/[\w-]+: ?/g) ?? []))];
}

function readAsRows(text: string): void {
  const {pattern, problems} = readRows(text);
  const proved = proveRows(pattern);
  const all = [...problems, ...proved.problems, ...nameSlips(pattern, proved.problems)];
  for (const {span, message} of all) requireSpan(span, text, message);
  proveForEveryMultiple(pattern);
  writeRows(pattern);
  usedAbbreviations(pattern, 'british');
  const {grid} = chartOfRows(text);
  if (grid) writeChart(grid);
}

function asChart(text: string): readonly string[] {
  const {grid} = chartOfRows(text);
  return grid ? [writeChart(grid)] : [];
}

function readAsChart(text: string): void {
  const {chart, problems} = readChart(text);
  requireThat((chart === null) === problems.length > 0, 'a chart with problems, or none without');
  for (const {span, message} of problems) requireSpan(span, text, message);
  if (chart?.kind === 'stitches') gridToRows(chart.grid);
  if (chart?.kind !== 'colours') return;
  longFloats(chart.grid, 5);
  for (const facts of [colourShares, crowdedRows, bobbinCounts, neighbourContrasts]) facts(chart.grid);
}

async function readImport(text: string, format: ImportFormat): Promise<void> {
  const decoded = decodeText(Buffer.from(text)).text;
  const {entries, problems} = await readReferences(decoded, format);
  for (const {span, message} of [...problems, ...entries.map((entry) => ({...entry, message: 'an entry'}))]) {
    requireSpan(span, decoded, message);
  }
  const sources = chooseNew(entries, []).added.map(({source}) => source);
  for (const {id} of sources) requireThat(isCitationKey(id), `${id} cannot be cited`);
  if (sources.length === 0) return;
  const {whole} = appendToLibrary(null, sources, 'a file');
  const read = readLibraryFile(Buffer.from(whole ?? []).toString('utf8')).sources;
  requireThat(
    isDeepStrictEqual(read?.map(plain), sources.map(plain)),
    'the library reads other sources than were imported',
  );
}

/** As it is written in a file, so that objects without a prototype are like others. */
function plain(value: unknown): unknown {
  return JSON.parse(JSON.stringify(value));
}
