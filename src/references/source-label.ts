import type {Source, SourceName} from './source.ts';

/** A short name of a source for findings and lists: `Ashdown 2011`, `Lunde and Otter 2016`, `Knitted Edges, n.d.`. */
export function sourceLabel(source: Source): string {
  const year = source.issued?.['date-parts'][0]?.[0];
  const names = authorLabel(source);
  if (names !== null) return `${names} ${year ?? 'n.d.'}`;
  const title = shorten(source.title?.trim() || source.id);
  return `${title}, ${year ?? 'n.d.'}`;
}

/**
 * The names as they stand in a sentence: `Ashdown`, `Lunde and Otter`, `Pike et al.`; the editors or the director of a
 * work that names no author. Null when it names nobody.
 */
export function authorLabel(source: Source): string | null {
  const people = [source.author, source.director, source.editor].find((names) => names?.some(nameOf)) ?? [];
  const names = people.map(nameOf).filter((name) => name !== '');
  const [first, second] = names;
  if (first === undefined) return null;
  if (second === undefined) return first;
  return names.length === 2 ? `${first} and ${second}` : `${first} et al.`;
}

/** The title up to its first colon: what a subtitle is set off with. Null when there is no subtitle. */
export function shortTitle(title: string): string | null {
  const main = title.split(/:\s/)[0]?.trim();
  return main && main !== title.trim() ? main : null;
}

function nameOf(name: SourceName): string {
  const family = [name['non-dropping-particle'], name.family].filter(Boolean).join(' ');
  return (family || name.literal || name.given || '').trim();
}

function shorten(title: string): string {
  const main = shortTitle(title) ?? title;
  if (main.length <= 40) return main;
  return `${main.slice(0, 40).replace(/\s+\S*$/, '')}…`;
}
