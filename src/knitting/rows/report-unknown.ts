import {nearestName} from '../../support/nearest-name.ts';
import type {Cursor} from './cursor.ts';
import {skipClause} from './skip-clause.ts';
import type {StepList} from './step-list.ts';

/** What a slip of the pen is compared with; `#` stands for the number that was written. */
const knownForms = (
  'k p k# p# knit purl k#tog p#tog k#togtbl p#togtbl ssk ssp sssk skp skpo sk#p sk#po s#kp psso p#sso sl sl# yo yfwd ' +
  'yrn yon M# M#L M#R M#P kfb pfb kfbf RLI LLI tbl wyif wyib pm sm rm turn w&t MB RT LT C#B C#F T#B T#F Cr#B Cr#F ' +
  'rep repeat from to last end times twice more marker slip together cast bind off over narrow purlwise knitwise ' +
  'inc dec drop make round row patt RC LC RPC LPC'
).split(' ');

/** Nearest names are looked for so often; a page of nonsense is not a slip of the pen. */
const mostLookups = 40;
const longestWord = 24;

/** Reports the word at the cursor, whole as it is written, and goes on behind the next comma. */
export function reportUnknown(cursor: Cursor, list: StepList): void {
  const {tokens, problems, ownNames, text} = cursor.reading;
  let first = cursor.at;
  while (first > 0 && tokens[first]?.isApart === false && isOfWord(tokens[first - 1]?.kind)) first -= 1;
  let last = cursor.at;
  while (tokens[last + 1]?.isApart === false && isOfWord(tokens[last + 1]?.kind) && last + 1 < cursor.to)
    last += 1;
  const span = {start: tokens[first]?.start ?? 0, end: tokens[last]?.end ?? 0};
  while ((list.steps.at(-1)?.span.end ?? -1) > span.start) list.steps.pop();
  list.clauseStart = Math.min(list.clauseStart, list.steps.length);

  const word = text.slice(span.start, span.end);
  const known = [...ownNames, ...knownForms.map((form) => form.replace('#', /\d+/.exec(word)?.[0] ?? '1'))];
  const isLookedUp = problems.length < mostLookups && word.length <= longestWord;
  const near = isLookedUp ? nearestName(word, known) : null;
  const isKnown = near !== null && near.toLowerCase() === word.toLowerCase();
  cursor.complain(
    isKnown
      ? `\`${word}\` says nothing at this place`
      : `\`${shorten(word)}\` is not a stitch or an instruction that is known here`,
    isKnown ? `Check the words around \`${word}\`, and that none is missing.` : hintFor(near),
    span,
  );
  cursor.at = Math.max(cursor.at, last) + 1;
  skipClause(cursor);
}

function hintFor(near: string | null): string {
  const define = 'define it in the block, such as `MB: uses 1, makes 1, "make bobble"`.';
  return near === null
    ? `Write it as the abbreviation lists do, or ${define}`
    : `Perhaps \`${near}\` is meant; otherwise ${define}`;
}

function isOfWord(kind: string | undefined): boolean {
  return kind === 'word' || kind === 'number' || kind === 'ordinal';
}

function shorten(word: string): string {
  return word.length > 40 ? `${word.slice(0, 40)}…` : word;
}
