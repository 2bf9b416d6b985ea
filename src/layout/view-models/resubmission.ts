import type {Assessment, Binder, Item} from '../../model/binder.ts';
import type {ItemDifference} from '../../model/difference.ts';
import type {Measurement, Rework} from '../../model/schema/item-fields.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';
import {kindWords} from './kind-words.ts';
import {firstLeaf} from './leaf-reference.ts';
import {finalMeasurement} from './measured-in-short.ts';
import {latestRework, resubmissionRound} from './rework-round.ts';

export interface RemarkView {
  /** What the assessors wrote, word for word, by paragraph. */
  readonly paragraphs: readonly string[];
  readonly from: string | null;
  readonly received: string;
  readonly round: number;
}

export interface ComparedMeasure {
  readonly label: string;
  readonly before: string;
  readonly now: string;
}

/** The page that goes in front of an item that is sent again. */
export interface ResubmissionView {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  readonly round: number;
  readonly leaf: string;
  readonly candidate: string;
  readonly certificate: string;
  readonly date: string;
  readonly remark: RemarkView | null;
  readonly done: readonly string[];
  readonly measures: {
    /** When each was measured; null when the date was not recorded. */
    readonly before: string | null;
    readonly now: string | null;
    readonly rows: readonly ComparedMeasure[];
  } | null;
  /** The remarks of earlier rounds with what was done then, the first round first. */
  readonly history: readonly {
    readonly remark: RemarkView;
    readonly done: readonly string[];
  }[];
  /** What changed in the words since the round named; null where no old version is kept. */
  readonly changes: {
    readonly round: number;
    readonly facts: ItemDifference['facts'];
    readonly paragraphs: readonly (readonly {
      readonly isNew: boolean;
      readonly isOld: boolean;
      readonly text: string;
    }[])[];
  } | null;
}

export function resubmissionView(input: LayoutInput, item: Item): ResubmissionView {
  const {binder} = input;
  const {candidate, certificate, date} = binder.settings;
  const round = resubmissionRound(binder, item);
  const rework = latestRework(item);
  return {
    id: item.id,
    title: setTypography(item.title),
    kind: kindWords[item.kind],
    round,
    leaf: firstLeaf(item.id),
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    certificate: setTypography([certificate.name, certificate.part].filter(Boolean).join(', ')),
    date,
    remark: remarkView(binder, item, round),
    done: paragraphs(rework?.done ?? '').map(setTypography),
    measures: rework === null ? null : measures(input, item, rework),
    history: historyOf(binder, item, round),
    changes: changesOf(input, item),
  };
}

function changesOf({differences}: LayoutInput, {id}: Item): ResubmissionView['changes'] {
  const difference = differences?.get(id);
  if (difference === undefined) return null;
  return {
    round: difference.round,
    facts: difference.facts.map(({label, before, now}) => ({
      label,
      before: setTypography(before),
      now: setTypography(now),
    })),
    paragraphs: difference.paragraphs.map((stretches) =>
      stretches.map(({kind, text}) => ({
        isNew: kind === 'new',
        isOld: kind === 'old',
        text: setTypography(text),
      })),
    ),
  };
}

/** Every answer about the item before the last. */
function historyOf(binder: Binder, item: Item, round: number): ResubmissionView['history'] {
  return binder.assessments
    .filter((answer) => answer.round < round - 1)
    .flatMap((answer) => {
      const remark = remarkView(binder, item, answer.round + 1);
      if (remark === null || remark.round !== answer.round) return [];
      const rework = item.fields.rework.find((each) => each.round === answer.round + 1);
      return [{remark, done: paragraphs(rework?.done ?? '').map(setTypography)}];
    });
}

/** The answer to the last round before this one in which the item was assessed. */
function remarkView({assessments}: Binder, item: Item, round: number): RemarkView | null {
  const answer = assessments
    .filter((one) => one.round < round && one.results[item.id] !== undefined)
    .reduce<Assessment | null>(
      (latest, one) => (latest === null || one.round > latest.round ? one : latest),
      null,
    );
  const remark = answer?.results[item.id]?.remark;
  if (!answer || remark === undefined) return null;
  return {
    paragraphs: paragraphs(remark),
    from: answer.from ?? null,
    received: answer.received,
    round: answer.round,
  };
}

function paragraphs(text: string): string[] {
  return text
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.trim())
    .filter((paragraph) => paragraph !== '');
}

/** What was measured before, beside the same measures now; null when nothing was recorded of the earlier state. */
function measures({gaugeInWords}: LayoutInput, item: Item, {before}: Rework): ResubmissionView['measures'] {
  const now = measuredLike(item, before?.when);
  if (before === undefined || now === null) return null;
  const rows: readonly [string, string | null, string | null][] = [
    ['Stitches counted', counts(before.stitches), counts(now.stitches)],
    ['Rows counted', counts(before.rows), counts(now.rows)],
    ['Mean gauge', gaugeInWords(before), gaugeInWords(now)],
    ...(['top', 'bottom', 'left', 'right'] as const).map((edge): [string, string | null, string | null] => [
      `${edge.charAt(0).toUpperCase()}${edge.slice(1)} edge`,
      before.size?.[edge]?.text ?? null,
      now.size?.[edge]?.text ?? null,
    ]),
  ];
  return {
    before: before.on ?? null,
    now: now.on ?? null,
    rows: rows
      .filter(([, then, since]) => then !== null || since !== null)
      .map(([label, then, since]) => ({label, before: shown(then), now: shown(since)})),
  };
}

/** Compares like with like: the same state of blocking where the earlier one is known. */
function measuredLike(item: Item, when: Measurement['when'] | undefined): Measurement | null {
  const measured = 'measured' in item.fields ? item.fields.measured : [];
  return measured.findLast((one) => one.when === when) ?? finalMeasurement(item);
}

/** `19.5, 20, 19.5 over 10 cm`; counts over different lengths are each written out. */
function counts(list: Measurement['stitches'] | undefined): string | null {
  if (list === undefined || list.length === 0) return null;
  const parts = list.map(({text}) => text.split(/\s+over\s+/i));
  const [length] = new Set(parts.map(([, over]) => over));
  const isCommon = parts.every(([, over]) => over === length);
  return isCommon
    ? `${parts.map(([count]) => count).join(', ')} over ${length}`
    : list.map(({text}) => text).join('; ');
}

function shown(measure: string | null): string {
  return measure === null ? '–' : setTypography(measure);
}
