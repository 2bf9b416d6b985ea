import type {Locator} from './locator.ts';
import {writtenLocatorLabel} from './locator-labels.ts';

/** A locator as it is written for a reader outside a citation: `p. 57`, `pp. 112–114`, `fig. 3`, `t. 3:20`. */
export function locatorInWords({label, value}: Locator): string {
  const isSeveralPages = label === 'page' && /[–,]/.test(value);
  return `${isSeveralPages ? 'pp.' : writtenLocatorLabel(label)} ${value}`;
}
