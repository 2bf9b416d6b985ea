import type {Source} from '../source.ts';
import {freeKey, isCitationKey, makeKey} from './make-key.ts';
import type {ImportedEntry} from './read-references.ts';
import {knownSources} from './same-source.ts';

/** A source for the library, and what is to be said of it. */
export interface NewSource {
  readonly source: Source;
  readonly dropped: readonly string[];
  readonly changed: readonly string[];
}

export interface LeftOut {
  /** The key that it has in the file, or what else it is known by there. */
  readonly name: string;
  readonly reason: string;
}

export interface Choice {
  readonly added: readonly NewSource[];
  readonly leftOut: readonly LeftOut[];
}

/**
 * The entries that the library does not have yet, each under a key of its own. One whose key, ISBN, DOI, or title and
 * year are there already, in the library or earlier in the file, is left out; a key that only the file has twice gets a
 * letter, and one that cannot be cited is made anew.
 */
export function chooseNew(entries: readonly ImportedEntry[], library: readonly Source[]): Choice {
  const known = knownSources(library);
  const libraryKeys = new Set(library.map(({id}) => id));
  const keys = new Set(libraryKeys);
  const fileKeys = new Set(entries.map(({key}) => key));
  const added: NewSource[] = [];
  const leftOut: LeftOut[] = [];
  for (const {key, source: read, dropped, changed} of entries) {
    const name = key ?? read.title ?? 'an entry without key and title';
    const isLegal = key !== null && isCitationKey(key);
    const same = known.sameAs(read);
    if (isLegal && libraryKeys.has(key)) leftOut.push({name, reason: 'the library has a source of this key'});
    else if (same !== null) leftOut.push({name, reason: `it has the ${same.by} of ${same.key}`});
    else if (saysNothing(read)) leftOut.push({name, reason: 'it has neither a title nor a name'});
    else {
      const base = isLegal ? key : makeKey(read);
      const id = freeKey(base, (each) => keys.has(each) || (each !== key && fileKeys.has(each)));
      keys.add(id);
      const source = {id, ...read};
      known.add(source);
      added.push({source, dropped, changed: [...keyChange(key, id), ...changed]});
    }
  }
  return {added, leftOut};
}

function saysNothing({title, author, editor, director}: Omit<Source, 'id'>): boolean {
  return title === undefined && author === undefined && editor === undefined && director === undefined;
}

function keyChange(key: string | null, id: string): readonly string[] {
  if (key === id) return [];
  if (key === null) return ['it had no key'];
  return [
    `its key was \`${key}\`${isCitationKey(key) ? ', which stands in the file before' : ', which cannot be cited'}`,
  ];
}
