import type {Binder, LibraryEntry} from '../../model/binder.ts';
import {bookTypes, type Source} from '../../references/source.ts';

/** The library by key. */
export function entriesByKey(binder: Binder): ReadonlyMap<string, LibraryEntry> {
  const byKey = new Map<string, LibraryEntry>();
  for (const entry of binder.library) if (!byKey.has(entry.source.id)) byKey.set(entry.source.id, entry);
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
