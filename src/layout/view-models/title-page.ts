import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import {enclosures} from './enclosures.ts';
import {latestRework} from './rework-round.ts';

export interface TitlePageView {
  readonly certificate: string;
  readonly part: string | null;
  readonly guild: string | null;
  readonly candidate: {
    readonly name: string;
    readonly number: string | null;
    readonly address: readonly string[];
    readonly email: string | null;
  };
  readonly date: string;
  /** The latest round that an item of the binder is reworked for; null for a first submission. */
  readonly round: number | null;
  readonly holds: readonly string[];
}

export function titlePageView(input: LayoutInput): TitlePageView {
  const {binder} = input;
  const {candidate, certificate, date} = binder.settings;
  const round = Math.max(0, ...binder.items.map((item) => latestRework(item)?.round ?? 0));
  return {
    certificate: setTypography(certificate.name),
    part: certificate.part === undefined ? null : setTypography(certificate.part),
    guild: certificate.guild === undefined ? null : setTypography(certificate.guild),
    candidate: {
      name: setTypography(candidate.name),
      number: candidate.number ?? null,
      address: candidate.address.map(setTypography),
      email: candidate.email ?? null,
    },
    date,
    round: round === 0 ? null : round,
    holds: enclosures(input),
  };
}
