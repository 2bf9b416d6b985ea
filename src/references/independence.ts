import {sameLetters} from './same-letters.ts';
import type {Source} from './source.ts';
import {creatorsOf, mainTitle} from './source-identity.ts';

/** Beyond this many sources the largest set is looked for step by step, which may find one too few. */
const exactUpTo = 16;

/**
 * The most of `sources` of which no two share an author (or, without authors, an editor or director), and no two are
 * editions of one work, which have the same main title. Common practice, no source: two books of one author are one
 * opinion.
 */
export function independentSources(sources: readonly Source[]): number {
  const marks = sources.map(marksOf);
  const isTied = (a: number, b: number) => marks[a]?.some((mark) => marks[b]?.includes(mark)) ?? false;
  const all = sources.map((_, index) => index);
  return largestSet(all.length > exactUpTo ? all.slice(0, exactUpTo) : all, isTied);
}

/** What makes two sources one opinion when both have it. */
function marksOf(source: Source): readonly string[] {
  const names = creatorsOf(source).map(
    ({family, given, literal}) => `by ${sameLetters(`${family ?? literal ?? ''} ${given?.charAt(0) ?? ''}`)}`,
  );
  const main = mainTitle(source);
  return [...names, main === '' ? `key ${source.id}` : `called ${main}`];
}

function largestSet(left: readonly number[], isTied: (a: number, b: number) => boolean): number {
  const [first, ...others] = left;
  if (first === undefined) return 0;
  const untied = others.filter((other) => !isTied(first, other));
  const taken = 1 + largestSet(untied, isTied);
  // Whoever is tied to nothing belongs to every largest set.
  return untied.length === others.length ? taken : Math.max(taken, largestSet(others, isTied));
}
