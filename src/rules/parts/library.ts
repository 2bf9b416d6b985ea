import type {Binder, LibraryEntry} from '../../model/binder.ts';
import {bookTypes, type Source} from '../../references/source.ts';

type Library = Binder['library'];

/** By library, which never changes: it is asked for once an item. */
const known = new WeakMap<Library, ReadonlyMap<string, LibraryEntry>>();

/** The library by key. */
export function entriesByKey({library}: Binder): ReadonlyMap<string, LibraryEntry> {
  const before = known.get(library);
  if (before) return before;
  const byKey = new Map<string, LibraryEntry>();
  for (const entry of library) if (!byKey.has(entry.source.id)) byKey.set(entry.source.id, entry);
  known.set(library, byKey);
  return byKey;
}

/** Whether a source counts where a syllabus asks for books. */
export function isBook(entry: LibraryEntry): boolean {
  return bookTypes.includes(entry.source.type);
}

/** Whether a source is read online: web pages and blog posts, and what the library says is on the shelf `online`. */
export function isOnline({type, shelf}: Source): boolean {
  return type === 'webpage' || type === 'post-weblog' || shelf === 'online';
}
