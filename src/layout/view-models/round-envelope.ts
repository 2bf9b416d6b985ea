import type {Item} from '../../model/binder.ts';
import {kindsWithKnitting} from '../../model/kinds.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import {kindWords} from './kind-words.ts';

/** One item that is sent again. */
interface SentAgain {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  readonly hasPiece: boolean;
}

/** What the letter, the packing list and the postal label of a round say. */
export interface RoundEnvelopeView {
  readonly round: number;
  readonly candidate: {readonly name: string; readonly number: string | null};
  readonly certificate: string;
  readonly from: readonly string[];
  readonly email: string | null;
  readonly to: readonly string[];
  readonly date: string;
  /** When the answer came that asked for the rework; null where none is recorded. */
  readonly answered: string | null;
  /** The candidate's own words, by paragraph. */
  readonly words: readonly string[];
  readonly items: readonly SentAgain[];
}

export function roundEnvelopeView(
  {binder}: LayoutInput,
  items: readonly Item[],
  round: number,
): RoundEnvelopeView {
  const {candidate, certificate, date, rounds} = binder.settings;
  const words = rounds.find((each) => each.round === round)?.letter ?? '';
  return {
    round,
    candidate: {name: candidate.name, number: candidate.number ?? null},
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    from: candidate.address.map(setTypography),
    email: candidate.email ?? null,
    to: [...(certificate.guild === undefined ? [] : [certificate.guild]), ...certificate.address].map(
      setTypography,
    ),
    date,
    answered: binder.assessments.findLast((answer) => answer.round < round)?.received ?? null,
    words: words
      .split(/\n\s*\n/)
      .map((paragraph) => setTypography(paragraph.trim()))
      .filter((paragraph) => paragraph !== ''),
    items: items.map(({id, title, kind}) => ({
      id,
      title: setTypography(title),
      kind: kindWords[kind],
      hasPiece: kindsWithKnitting.includes(kind),
    })),
  };
}
