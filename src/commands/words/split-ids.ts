import {UsageError} from '../../support/usage-error.ts';

/** Ids such as `S-07` and a folder, typed in any order; the ids in capitals. Throws `UsageError` for a second folder. */
export function splitIds(words: readonly string[]): {
  readonly ids: readonly string[];
  readonly folder: string;
} {
  const ids = words.filter((word) => /^[A-Za-z]{1,4}-[0-9]{1,3}$/.test(word));
  const [folder = '.', second] = words.filter((word) => !ids.includes(word));
  if (second !== undefined) {
    throw new UsageError(`\`${folder}\` and \`${second}\` cannot both be the binder folder`);
  }
  return {ids: ids.map((id) => id.toUpperCase()), folder};
}
