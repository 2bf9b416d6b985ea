import {chooseNew} from '../../../src/references/import/choose-new.ts';
import type {ImportFormat} from '../../../src/references/import/csl-record.ts';
import {readReferences} from '../../../src/references/import/read-references.ts';
import type {Source} from '../../../src/references/source.ts';

/** What an empty library would get from `text`, and the first lines at which something could not be read. */
export async function importText(text: string, format: ImportFormat, library: readonly Source[] = []) {
  const {entries, problems} = await readReferences(text, format);
  const {added, leftOut} = chooseNew(entries, library);
  return {
    added,
    leftOut,
    sources: added.map(({source}) => source),
    problems: problems.slice(0, 50).map(({message, span}) => ({
      message,
      line: text.slice(0, span.start).split('\n').length,
    })),
  };
}
