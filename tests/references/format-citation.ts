import type {Citation} from '../../src/references/citation.ts';
import {writtenLocatorLabel} from '../../src/references/locator-labels.ts';

/** Writes a citation as the candidate would: `see -@key, p. 57, and onward`. */
export function formatCitation({
  prefix,
  suppressAuthor,
  key,
  locator,
  suffix,
}: Pick<Citation, 'prefix' | 'suppressAuthor' | 'key' | 'locator' | 'suffix'>): string {
  const place = locator === null ? '' : `, ${writtenLocatorLabel(locator.label)} ${locator.value}`;
  const gap = suffix === '' || suffix.startsWith(',') ? '' : ' ';
  return `${prefix === '' ? '' : `${prefix} `}${suppressAuthor ? '-' : ''}@${key}${place}${gap}${suffix}`;
}
