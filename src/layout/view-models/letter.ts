import type {ItemOfKind} from '../../model/binder.ts';
import type {ComposedItem, SafeHtml} from '../../model/composed.ts';
import type {LayoutInput} from '../layout-input.ts';
import {setType} from '../set-type.ts';
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
    title: setType(item.title),
    candidate: {name: candidate.name, number: candidate.number ?? null},
    from: candidate.address.map(setType),
    to: (item.fields.to.length > 0 ? item.fields.to : examiner).map(setType),
    email: candidate.email ?? null,
    date: item.fields.date ?? date,
    salutation: setType(item.fields.salutation ?? 'Dear Assessors,'),
    body: composed.body,
    closing: setType(item.fields.closing ?? 'Yours faithfully,'),
    enclosures: enclosures(input),
  };
}
