import {type Finding, fileStart} from '../diagnostics/finding.ts';
import type {Workspace} from '../io/workspace.ts';
import {type Binder, itemsById, type Requirement, requirementsOf} from '../model/binder.ts';
import {clippingsFor} from '../model/clippings.ts';
import {stubItem, stubPath} from '../model/stub-item.ts';
import {contentFolder, contentKind} from '../pipeline.ts';
import {requirementWithoutItem} from '../rules/requirement-without-item.ts';
import type {Outcome, Surroundings} from './command.ts';
import {openBinder} from './open-binder.ts';
import {requireKnown} from './require-known.ts';

/**
 * Makes a stub for each requirement of `ids` without an item; without ids, for all. A file that is there is never
 * touched: what stands in the way of one stub is a finding, and the others are made. Throws `UsageError` for an id that
 * the syllabus does not have.
 */
export async function runNew(folder: string, ids: readonly string[], around: Surroundings): Promise<Outcome> {
  const {binder, findings, textOf, workspace} = await openBinder(folder, around);
  if (binder === null) return {findings, textOf, written: [], isBroken: true};
  const items = itemsById(binder);
  const unread = await unreadItems(binder, workspace);
  const written: string[] = [];
  const faults: Finding[] = [];
  for (const requirement of chosen(binder, ids)) {
    const {id} = requirement;
    const file = items.get(id)?.file;
    if (file !== undefined) {
      if (ids.length > 0) around.progress(`${id} has its item: ${file}`);
      continue;
    }
    const meant = unread.find(({text}) => mentions(text, id));
    const path = stubPath(requirement);
    if (meant) faults.push(fault(meant.file, `it seems to answer \`${id}\` and cannot be read`, mendIt));
    else if (
      await workspace.create(
        path,
        stubItem(requirement, binder.settings.units, clippingsFor(binder.clippings.entries, id)),
      )
    )
      written.push(path);
    else
      faults.push(
        fault(path, `it has the name of the stub for \`${id}\`, and does not answer \`${id}\``, moveIt),
      );
  }
  if (written.length + faults.length === 0)
    around.progress('No file was to be made: every requirement has its item.');
  return {findings: faults, textOf, written, isBroken: false};
}

const mendIt = 'Mend it; `check` says what is wrong. No stub was made beside it.';
const moveIt = 'Rename it or move it away, and ask again. It was not touched.';

function fault(file: string, message: string, hint: string): Finding {
  const {id, severity} = requirementWithoutItem;
  return {rule: id, severity, file, place: fileStart, message, hint};
}

/** The texts of files that are no items because reading them failed. */
async function unreadItems(binder: Binder, workspace: Workspace) {
  const read = new Set(binder.items.map(({file}) => file));
  const files = (await workspace.list(contentFolder)).filter(
    (path) => contentKind(path) === 'item' && !read.has(path),
  );
  return Promise.all(files.map(async (file) => ({file, text: (await workspace.readText(file)) ?? ''})));
}

function mentions(text: string, id: string): boolean {
  return new RegExp(`requirement\\W{1,5}${id}\\b`, 'i').test(text);
}

function chosen(binder: Binder, ids: readonly string[]): readonly Requirement[] {
  const requirements = requirementsOf(binder);
  requireKnown(
    ids,
    requirements.map(({id}) => id),
    'the syllabus has no',
  );
  return ids.length === 0 ? requirements : requirements.filter(({id}) => ids.includes(id));
}
