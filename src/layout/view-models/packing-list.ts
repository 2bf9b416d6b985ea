import {setTypography} from '../../support/typography.ts';
import {binderSheets} from '../binder-sheets.ts';
import type {LayoutInput} from '../layout-input.ts';
import type {PageCounts} from '../printable.ts';
import {yarnInShort} from './facts.ts';
import {leafRange} from './leaf-range.ts';
import {piecesOfKnitting} from './tags.ts';

/** One sheet of the binder to tick off. */
export interface PackedSheet {
  readonly label: string;
  readonly title: string;
  /** The leaf numbers, such as `1–3`; null while the page count is unknown. */
  readonly leaves: string | null;
  /** How many pieces of paper they stand on. */
  readonly papers: number | null;
}

export interface PackedPiece {
  readonly id: string;
  readonly title: string;
  readonly yarn: string | null;
}

export interface PackingListView {
  readonly candidate: string;
  readonly certificate: string;
  readonly date: string;
  readonly sheets: readonly PackedSheet[];
  readonly pieces: readonly PackedPiece[];
  /** Pieces of paper in the whole binder; null while unknown. */
  readonly papers: number | null;
}

/** `counts` are the page counts of the binder as printed. */
export function packingListView(input: LayoutInput, counts: PageCounts): PackingListView {
  const {candidate, certificate, date, sides} = input.binder.settings;
  const sheets = binderSheets(input, counts)
    .filter(({blank}) => !blank)
    .map(({anchor, label, title}) => {
      const pages = counts?.get(anchor);
      const papers = pages === undefined ? null : Math.ceil(pages / (sides === 'duplex' ? 2 : 1));
      return {label, title, leaves: leafRange(pages), papers};
    });
  return {
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    date,
    sheets,
    pieces: piecesOfKnitting(input).map((item) => ({
      id: item.id,
      title: setTypography(item.title),
      yarn: 'yarn' in item.fields ? yarnInShort(item.fields.yarn) : null,
    })),
    papers: counts === null ? null : sheets.reduce((sum, {papers}) => sum + (papers ?? 0), 0),
  };
}
