import {UsageError} from '../../support/usage-error.ts';

/**
 * Names of sheets and a folder, typed in any order; null where no folder was. A sheet has the name that stands on its
 * leaves before the `·`: an id such as `S-07`, `Title`, `Contents`, `References`, `Attempts` or `Tab 2`; small letters
 * and `tab-2` are understood too. Throws `UsageError` for a second folder.
 */
export function splitSheets(words: readonly string[]): {
  readonly sheets: readonly string[];
  readonly folder: string | null;
} {
  const sheets: string[] = [];
  const folders: string[] = [];
  for (const word of words) {
    const sheet = sheetName(word);
    if (sheet === null) folders.push(word);
    else sheets.push(sheet);
  }
  const [folder = null, second] = folders;
  if (second !== undefined)
    throw new UsageError(`\`${folder}\` and \`${second}\` cannot both be the binder folder`);
  return {sheets, folder};
}

function sheetName(word: string): string | null {
  const tab = /^tab[ -]?(\d{1,2})$/i.exec(word)?.[1];
  if (tab !== undefined) return `Tab ${Number(tab)}`;
  if (/^[A-Za-z]{1,4}-[0-9]{1,3}$/.test(word)) return word.toUpperCase();
  return /^(title|contents|references|attempts)$/i.test(word)
    ? word.charAt(0).toUpperCase() + word.slice(1).toLowerCase()
    : null;
}
