import type {ItemOfKind} from '../../model/binder.ts';
import type {ComposedItem, SafeHtml} from '../../model/composed.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import {enclosures} from './enclosures.ts';

export interface LetterView {
  readonly id: string;
  readonly title: string;
  readonly candidate: {readonly name: string; readonly number: string | null};
  /** Sender and addressee, line by line, without their names' repetition. */
  readonly from: readonly string[];
  readonly to: readonly string[];
  readonly email: string | null;
  readonly date: string;
  readonly salutation: string;
  readonly body: SafeHtml;
  readonly closing: string;
  readonly enclosures: readonly string[];
}

/** A letter that names no addressee of its own goes to whoever examines the certificate. */
export function letterView(
  input: LayoutInput,
  item: ItemOfKind<'letter'>,
  composed: ComposedItem,
): LetterView {
  const {candidate, certificate, date} = input.binder.settings;
  const examiner = [...(certificate.guild === undefined ? [] : [certificate.guild]), ...certificate.address];
  return {
    id: item.id,
    title: setTypography(item.title),
    candidate: {name: candidate.name, number: candidate.number ?? null},
    from: candidate.address.map(setTypography),
    to: (item.fields.to.length > 0 ? item.fields.to : examiner).map(setTypography),
    email: candidate.email ?? null,
    date: item.fields.date ?? date,
    salutation: setTypography(item.fields.salutation ?? 'Dear Assessors,'),
    body: composed.body,
    closing: setTypography(item.fields.closing ?? 'Yours faithfully,'),
    enclosures: enclosures(input),
  };
}
