import {requirementsOf} from '../model/binder.ts';
import {clippingLine, readClippings} from '../model/clippings.ts';
import {clippingsPath} from '../model/read-binder-files.ts';
import {parseCitations} from '../references/citation.ts';
import {appendLines} from '../support/append-lines.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {UsageError} from '../support/usage-error.ts';
import type {Outcome, Surroundings} from './command.ts';
import {openBinder} from './open-binder.ts';
import {requireKnown} from './require-known.ts';

export interface ClippingToKeep {
  /** Requirements, in capitals. */
  readonly ids: readonly string[];
  /** Key of the source; null when none was named. */
  readonly source: string | null;
  /** Where in the source, as in a citation: `57`, `pp. 57-58`, `fig. 3`. */
  readonly page: string | null;
  readonly words: string;
}

const head = [
  '# Clippings',
  '',
  'Scraps of reading for items that are still to be written: the day, the items, the source in brackets, the words.',
  '`swatchleaf clip` adds lines at the end and changes none; you may write here as you like.',
  '',
];

/**
 * Adds a line to the clippings; every byte that stood there stays. Throws `UsageError` for an id that the syllabus does
 * not have, for a source that cannot be cited so, and when there is nothing to keep.
 */
export async function runClip(
  folder: string,
  clipping: ClippingToKeep,
  around: Surroundings,
): Promise<Outcome> {
  const {ids, source, words} = clipping;
  if (ids.length === 0) throw new UsageError('say which item the clipping is for, such as `S-07`');
  if (source === null && words.trim() === '')
    throw new UsageError('there is nothing to keep: add words or `--source`');
  const citation = citationText(clipping);
  const {binder, findings, textOf, workspace} = await openBinder(folder, around);
  if (binder === null) return {findings, textOf, written: [], isBroken: true};
  requireKnown(
    ids,
    requirementsOf(binder).map(({id}) => id),
    'the syllabus has no',
  );

  const before = await workspace.readBytes(clippingsPath);
  const line = clippingLine({on: around.today, ids, source: citation, words});
  if (readClippings(line).clippings.length !== 1)
    throw new UsageError('the words cannot be kept in one line');
  await workspace.write(clippingsPath, appendLines(before, [...(before === null ? head : []), line]));

  const keys = binder.library.map((entry) => entry.source.id);
  const isKnown = source === null || keys.includes(source);
  return {
    findings: [],
    textOf,
    written: [clippingsPath],
    isBroken: false,
    text: `Kept for ${englishList(ids)}: ${line.slice(2)}\n${isKnown ? '' : notInLibrary(source, keys)}`,
  };
}

function citationText({source, page}: ClippingToKeep): string | null {
  if (source === null) {
    if (page === null) return null;
    throw new UsageError('a page needs its source: add `--source` and the key of the source');
  }
  const text = `@${source}${page === null ? '' : `, ${page}`}`;
  const read = parseCitations(text);
  if (!read.ok) throw new UsageError(read.problems.map(({message, hint}) => `${message}. ${hint}`).join(' '));
  const [citation, second] = read.value;
  if (second !== undefined || citation?.key !== source || /[[\]\n]/.test(text))
    throw new UsageError(`\`${source}\` is not the key of a source`);
  return text;
}

function notInLibrary(source: string, keys: readonly string[]): string {
  const near = nearestName(source, keys);
  return `The library has no source \`${source}\` yet${near === null ? '' : `; did you mean \`${near}\`?`}\n`;
}
