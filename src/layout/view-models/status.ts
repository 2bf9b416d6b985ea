import {countFindings, describeCounts} from '../../diagnostics/count-findings.ts';
import {type BinderStatus, binderStatus, type RequirementStatus} from '../../model/binder-status.ts';
import type {StateCounts} from '../../model/item-state.ts';
import {eveningRule} from '../../model/missing.ts';
import {countsInWords, missingInWords, stateInWords, statesFromTheEnd} from '../../model/state-words.ts';
import {type MessagePart, messageParts} from '../../support/message-parts.ts';
import {setTypography} from '../../support/typography.ts';
import type {LayoutInput} from '../layout-input.ts';

/** A bar of states, in millimetres from its left end. */
export interface StateBar {
  readonly width: number;
  readonly words: string;
  readonly parts: readonly {readonly name: string; readonly at: number; readonly span: number}[];
}

export interface StatusLine {
  readonly id: string;
  readonly title: string;
  readonly state: string;
  /** Null where nothing is to be done. */
  readonly missing: readonly MessagePart[] | null;
}

export interface StatusSection {
  readonly number: number;
  readonly title: string;
  readonly bar: StateBar;
  readonly items: readonly StatusLine[];
}

export interface StatusView {
  readonly candidate: string;
  readonly date: string;
  readonly found: string;
  readonly whole: StateBar;
  readonly key: readonly {readonly name: string; readonly words: string}[];
  readonly sections: readonly StatusSection[];
  readonly ready: readonly StatusLine[];
  readonly nearest: readonly StatusLine[];
  readonly evening: readonly StatusLine[];
  readonly eveningRule: string;
}

const barWidth = 60;
/** Between two states. */
const gap = 0.4;

export function statusView({binder, findings}: Pick<LayoutInput, 'binder' | 'findings'>): StatusView {
  const {candidate} = binder.settings;
  const status: BinderStatus = binderStatus(binder, findings);
  return {
    candidate: [candidate.name, candidate.number].filter(Boolean).join(' · '),
    date: binder.today,
    found: describeCounts(countFindings(findings)),
    whole: stateBar(status.counts),
    key: statesFromTheEnd
      .filter((state) => status.counts[state] > 0)
      .map((state) => ({name: className(state), words: stateInWords(state)})),
    sections: status.sections.map(({number, title, counts, requirements}) => ({
      number,
      title: setTypography(title),
      bar: stateBar(counts),
      items: requirements.map(statusLine),
    })),
    ready: status.ready.map(statusLine),
    nearest: status.nearest.map(statusLine),
    evening: status.evening.map(statusLine),
    eveningRule,
  };
}

function statusLine(status: RequirementStatus): StatusLine {
  const isOpen = ['in work', 'rework'].includes(status.state) || status.missing.length > 0;
  return {
    id: status.id,
    title: setTypography(status.title),
    state: stateInWords(status.state),
    missing: isOpen ? messageParts(missingInWords(status)) : null,
  };
}

function stateBar(counts: StateCounts): StateBar {
  const total = statesFromTheEnd.reduce((sum, state) => sum + counts[state], 0);
  let before = 0;
  const parts = statesFromTheEnd
    .filter((state) => counts[state] > 0)
    .map((state) => {
      const at = (barWidth * before) / total;
      before += counts[state];
      return {
        name: className(state),
        at: hundredths(at),
        span: hundredths((barWidth * counts[state]) / total - gap),
      };
    });
  return {width: barWidth, words: countsInWords(counts), parts};
}

function className(state: string): string {
  return state.replace(' ', '-');
}

function hundredths(millimetres: number): number {
  return Math.round(millimetres * 100) / 100;
}
