import type {Item} from '../../model/binder.ts';
import {groupThousands} from '../../support/asked-range.ts';
import {wordsAsked} from './word-count.ts';

/** A bar of words against what is asked. Positions are millimetres from the left end of a 30 mm bar. */
export interface WordBar {
  readonly words: string;
  readonly asked: string;
  readonly fault: 'too few' | 'too many' | null;
  /** Where the bar of counted words ends. */
  readonly end: number;
  /** Where the asked range begins, and how long it is. */
  readonly from: number;
  readonly span: number;
}

const length = 30;

/** Null when the syllabus sets no word limit. */
export function wordBar(item: Item): WordBar | null {
  const asked = wordsAsked(item);
  if (asked === null) return null;
  const {words} = item.body;
  const {from = 0, to} = item.requirement?.limits.words ?? {};
  const scale = length / Math.max(words, (to ?? from) * 1.2, 1);
  return {
    words: groupThousands(words),
    asked,
    fault: words < from ? 'too few' : to !== undefined && words > to ? 'too many' : null,
    end: hundredths(words * scale),
    from: hundredths(from * scale),
    span: hundredths((to === undefined ? length : to * scale) - from * scale),
  };
}

function hundredths(millimetres: number): number {
  return Math.round(millimetres * 100) / 100;
}
