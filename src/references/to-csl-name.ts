import type {SourceName} from './source.ts';
import {toCslText} from './to-csl-text.ts';

/**
 * A name that the citation processor can take, or null when it says nobody. The processor needs a family name or a
 * literal one: a given name alone is a literal.
 */
export function toCslName({literal, ...name}: SourceName): Readonly<Record<string, string>> | null {
  const parts = Object.entries(name).map(([part, text]) => [part, toCslText(text ?? '')] as const);
  const personal = Object.fromEntries(parts.filter(([, text]) => text !== ''));
  if (personal.family !== undefined) return personal;
  const single = toCslText(literal ?? '') || personal.given;
  return single === undefined ? null : {literal: single};
}
