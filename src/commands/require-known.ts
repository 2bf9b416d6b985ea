import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {UsageError} from '../support/usage-error.ts';

/** Throws `UsageError` when some of `names` are not `known`: `says` and their list, and the name that a single one is near to. */
export function requireKnown(
  names: readonly string[],
  known: Iterable<string>,
  says: string,
  conjunction: 'and' | 'or' = 'and',
): void {
  const all = new Set(known);
  const unknown = names.filter((name) => !all.has(name));
  if (unknown.length === 0) return;
  const near = unknown.length === 1 ? nearestName(unknown[0] ?? '', all) : null;
  const list = englishList(
    unknown.map((name) => `\`${name}\``),
    conjunction,
  );
  throw new UsageError(`${says} ${list}${near ? `; did you mean \`${near}\`?` : ''}`);
}
