import type {SourceDate} from '../source.ts';
import {isRecord, textOf} from './csl-record.ts';

/** A date of another program's file. */
export interface ReadDate {
  readonly date: SourceDate;
  /** What was written, where a part of it is lost or had to be guessed; null where nothing is. */
  readonly guessedFrom: string | null;
}

/**
 * A date as CSL-JSON (`date-parts`, `raw`, `literal`), BibLaTeX (ISO 8601-2: `2011-05`, `1910~`, `2010/2012`), RIS
 * (`2011/05/17/`) or a person (`c1910`, `[1910]`, `17 May 2011`) writes it. Null when no year can be read.
 */
export function readDate(value: unknown): ReadDate | null {
  if (!isRecord(value)) return readText(textOf(value)?.trim() ?? '');
  const parts = value['date-parts'];
  if (!Array.isArray(parts)) return readText((textOf(value.raw) ?? textOf(value.literal) ?? '').trim());
  const ends = parts.slice(0, 2).map(cleanParts);
  const known = ends.filter((end) => end.length > 0);
  if (known.length === 0 || ends[0]?.length === 0) return null;
  const isCirca = value.circa !== undefined && value.circa !== false && value.circa !== 0;
  const isCut = JSON.stringify(parts.map(asNumbers)) !== JSON.stringify(known) || value.season !== undefined;
  return {
    date: {'date-parts': known, ...(isCirca ? {circa: true} : {})},
    guessedFrom: isCut ? JSON.stringify(parts) : null,
  };
}

function readText(written: string): ReadDate | null {
  if (written === '' || written.length > longestDate) return null;
  const time = written.replace(/T\d\d:.*$/, '');
  const isCirca = /^(?:c(?:a|irca)?\b\.?\s*|c(?=\d)|~|\[)|[?~%\]]$/i.test(time);
  const bare = time
    .replace(/^(?:c(?:a|irca)?\b\.?\s*|c(?=\d)|[~[©]\s*)+/i, '')
    .replace(/[?~%\].]+$/, '')
    .trim();
  const ends = rangeOf(bare);
  const known = ends?.filter((end) => end.length > 0) ?? [];
  if (known.length === 0) return null;
  const isPlain = /^-?\d{1,4}([-/]\d{1,2}){0,2}\/*$|^\d{4}(-\d\d){0,2}\/\d{4}(-\d\d){0,2}$/.test(time);
  return {
    date: {'date-parts': known, ...(isCirca ? {circa: true} : {})},
    guessedFrom: isPlain && isWhole(bare, known) ? null : written,
  };
}

const longestDate = 100;

/** Beginning and end, of which the second may be missing; null when the beginning is no date. */
function rangeOf(text: string): readonly (readonly number[])[] | null {
  const range = /^(\d{4}(?:-\d{2}){0,2})\s*(?:\/|--?|–)\s*(\d{4}(?:-\d{2}){0,2}|\.\.)?$/.exec(text);
  const [from, to] = range ? [range[1] ?? '', range[2] ?? ''] : [text, ''];
  const start = dayOf(from);
  if (start === null) return null;
  const end = dayOf(to);
  return end === null ? [start] : [start, end];
}

function dayOf(text: string): readonly number[] | null {
  const inDigits = /^(-?\d{1,4})(?:[-/](\d{0,2}))?(?:[-/](\d{0,2}))?(?:\/.*)?$/.exec(text);
  if (inDigits) {
    const numbers = inDigits.slice(1, 4).map((digits) => (digits ? Number(digits) : Number.NaN));
    return cleanParts(numbers);
  }
  const words = text.toLowerCase().match(/[a-z]+|\d+/g) ?? [];
  const year = words.find((word) => /^\d{4}$/.test(word));
  const month = words.map(monthNumber).find((number) => number > 0);
  const day = words.find((word) => /^\d{1,2}$/.test(word));
  const isOdd = words.length > 5 || words.some((word) => /[a-z]/.test(word) && !isDateWord(word));
  if (year === undefined || isOdd) return null;
  return cleanParts([Number(year), month, day === undefined ? undefined : Number(day)]);
}

function isDateWord(word: string): boolean {
  return monthNumber(word) > 0 || ['st', 'nd', 'rd', 'th', 'of', ...seasons].includes(word);
}

const seasons = ['spring', 'summer', 'autumn', 'fall', 'winter'];
const months = 'january february march april may june july august september october november december'.split(
  ' ',
);

/** 1 to 12 for an English month or its first three or more letters, 0 for any other word. */
export function monthNumber(word: string): number {
  if (word.length < 3) return 0;
  return months.findIndex((month) => month.startsWith(word.toLowerCase().replace(/^sept$/, 'sep'))) + 1;
}

/** Year, month and day as far as they can be a date. */
function cleanParts(parts: unknown): number[] {
  const [year, month, day] = asNumbers(parts);
  if (year === undefined || !Number.isInteger(year) || Math.abs(year) > 9999) return [];
  if (month === undefined || !Number.isInteger(month) || month < 1 || month > 12) return [year];
  if (day === undefined || !Number.isInteger(day) || day < 1 || day > 31) return [year, month];
  return [year, month, day];
}

function asNumbers(parts: unknown): (number | undefined)[] {
  if (!Array.isArray(parts)) return [];
  return parts.slice(0, 3).map((part) => {
    const text = textOf(part)?.trim() ?? '';
    return /^-?\d{1,4}$/.test(text) ? Number(text) : undefined;
  });
}

/** Whether every number that was written is in the date. */
function isWhole(text: string, ends: readonly (readonly number[])[]): boolean {
  return (text.match(/\d+/g) ?? []).length === ends.flat().length;
}
