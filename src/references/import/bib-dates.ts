import type {CslRecord} from './csl-record.ts';
import {monthNumber} from './read-date.ts';

/** A date field's text as CSL-JSON's raw date; undefined where nothing is written. */
export function bibDate(text: string | undefined): CslRecord | undefined {
  return text === undefined || text.trim() === '' ? undefined : {raw: text.replace(/[{}\\]/g, '').trim()};
}

/** `2011`, `may` and `17` as `2011-05-17`; a month that is a range or no month leaves the year. */
export function yearAndMonth(year?: string, month?: string, day?: string): string | undefined {
  if (year === undefined) return undefined;
  const words = (month ?? '')
    .replace(/[{}\\~,.]/g, ' ')
    .trim()
    .split(/\s+/);
  const number = words
    .map((word) => (/^\d{1,2}$/.test(word) && words.length === 1 ? Number(word) : monthNumber(word)))
    .find((each) => each > 0);
  const bare = year.replace(/[{}]/g, '').trim();
  if (number === undefined || !/^\d{4}$/.test(bare)) return year;
  const date = day ?? words.find((word) => /^\d{1,2}$/.test(word) && words.length > 1);
  const two = (digits: string | number) => String(digits).trim().padStart(2, '0');
  return [bare, two(number), ...(date === undefined ? [] : [two(date)])].join('-');
}
