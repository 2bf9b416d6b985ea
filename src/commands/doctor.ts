import {statSync} from 'node:fs';
import {tmpdir} from 'node:os';
import process from 'node:process';
import {OperationalError} from '../support/operational-error.ts';
import {plural} from '../support/plural.ts';
import {UsageError} from '../support/usage-error.ts';
import {visibleJson} from '../support/visible-json.ts';
import {visibleText} from '../support/visible-text.ts';
import {wrapWords} from '../support/wrap-words.ts';
import {browserSetting} from './browser-setting.ts';
import {type Outcome, type Surroundings, saying} from './command.ts';
import {fine, lacks, type MachineFact, note, type Seen} from './doctor/machine-fact.ts';
import {seeBrowser} from './doctor/see-browser.ts';
import {type Passed, seeClock} from './doctor/see-clock.ts';
import {newestFile, seeLeftovers, seeSpace, whyNotWritable} from './doctor/see-folders.ts';
import {cacheFolder, type OpenedFolder, openFolder} from './open-binder.ts';
import {readOwnManifest} from './own-manifest.ts';

export interface DoctorWishes {
  /** Path of the browser, from the command line; null where none was named. */
  readonly browser: string | null;
  readonly isJson: boolean;
}

/**
 * Looks at everything that Swatchleaf needs of a computer, one thing after the other, whatever the others came to. Changes
 * nothing. `folder` is null when none was named: then it may be no binder.
 */
export async function runDoctor(
  folder: string | null,
  around: Surroundings,
  wishes: DoctorWishes,
): Promise<Outcome> {
  const opened = await openFolder(folder ?? '.', around).catch((error: unknown) => {
    if (folder === null && error instanceof UsageError) return null;
    throw error;
  });
  const facts = await seeAll(opened, around, wishes);
  const isLacking = facts.some(({state}) => state === 'lacks');
  const json = {schemaVersion: 1, lacking: isLacking, checks: facts};
  return {
    ...saying(wishes.isJson ? visibleJson(json) : asText(facts, around.columns)),
    isLacking,
  };
}

async function seeAll(
  opened: OpenedFolder | null,
  around: Surroundings,
  {browser: flag}: DoctorWishes,
): Promise<readonly MachineFact[]> {
  // Before the browser starts, since that clears away what earlier runs left.
  const leftovers = await seen(() => seeLeftovers(opened?.folder ?? null));
  around.progress('Trying the browser …');
  const tried = await seeBrowser({
    flag,
    setting: opened && (await browserSetting(opened.workspace)),
    binderFolder: opened?.folder ?? null,
  });
  const root = opened?.folder ?? around.currentFolder;
  const places = [
    {folder: root, where: 'where the binder is'},
    {folder: tmpdir(), where: 'where the browser keeps its own files'},
  ];
  return [
    {id: 'node', name: 'Node.js', ...seeNode()},
    {id: 'binder', name: 'Binder', ...seeBinder(opened)},
    {id: 'fonts', name: 'Fonts', ...tried.fonts},
    {id: 'browser', name: 'Browser', ...tried.browser},
    {id: 'printing', name: 'Printing', ...tried.printing},
    {id: 'build-folder', name: 'Build folder', ...(await seeBuildFolder(opened))},
    {id: 'temporary-folder', name: 'Temporary', ...(await seeTemporaryFolder())},
    {id: 'cache-folder', name: 'Cache', ...(await seeCacheFolder(around))},
    {id: 'disk', name: 'Disk', ...(await seen(() => seeSpace(places)))},
    {id: 'clock', name: 'Clock', ...(await seen(() => seeToday(opened, around)))},
    {id: 'leftovers', name: 'Leftovers', ...leftovers},
  ];
}

/** What the system refuses to tell is a note, and the next thing is looked at. */
async function seen(see: () => Promise<Seen>): Promise<Seen> {
  try {
    return await see();
  } catch (error) {
    if (!(error instanceof Error && 'code' in error) && !(error instanceof OperationalError)) throw error;
    return note(error.message, 'See whether this folder can be opened in your file manager.');
  }
}

function seeNode(): Seen {
  const least = readOwnManifest().engines.node.replace(/[^\d.]/g, '');
  const version = process.versions.node;
  const isEnough = version.localeCompare(least, 'en', {numeric: true}) >= 0;
  if (isEnough) return fine(`${version} (at least ${least})`);
  return lacks(`${version}, and at least ${least} is needed`, 'Install a newer Node.js.');
}

function seeBinder(opened: OpenedFolder | null): Seen {
  if (opened) return fine(opened.folder);
  return note(
    'there is none in this folder',
    'Go to the binder folder or name it, or begin one with `init`.',
  );
}

async function seeBuildFolder(opened: OpenedFolder | null): Promise<Seen> {
  if (opened === null) return note('not tried: there is no binder in this folder', 'Name the binder folder.');
  const fault = await whyNotWritable(`${opened.folder}/build`, 'build');
  return fault === null
    ? fine('can be written')
    : lacks(
        fault,
        'Move what is in the way, give yourself the right to write there, or move the binder to a folder of your own.',
      );
}

async function seeTemporaryFolder(): Promise<Seen> {
  const fault = await whyNotWritable(tmpdir(), tmpdir());
  return fault === null
    ? fine('can be written')
    : lacks(fault, 'Let TMPDIR (TEMP on Windows) name a folder of your own.');
}

async function seeCacheFolder(around: Surroundings): Promise<Seen> {
  const fault = await whyNotWritable(cacheFolder(around), 'the cache folder');
  return fault === null
    ? fine('can be written')
    : note(fault, 'Printing takes longer without it; XDG_CACHE_HOME may name another place.');
}

async function seeToday(opened: OpenedFolder | null, {today, environment}: Surroundings): Promise<Seen> {
  const newest = opened === null ? null : await newestFile(opened.folder);
  const installed = statSync(new URL(import.meta.url)).mtimeMs;
  const passed: readonly Passed[] = [
    {what: 'Swatchleaf was installed', at: installed},
    ...(newest === null ? [] : [{what: `\`${newest.path}\` was changed`, at: newest.changed}]),
  ];
  return seeClock(today, passed, Boolean(environment.SOURCE_DATE_EPOCH));
}

function asText(facts: readonly MachineFact[], columns: number): string {
  const width = Math.max(...facts.map(({name}) => name.length));
  const indent = 'lacks'.length + width + 4;
  const room = Math.max(40, columns);
  const lines = facts.flatMap(({state, name, says, remedy}) => [
    ...wrapWords(
      `${state.padEnd(5)}  ${name.padEnd(width)}  ${visibleText(says, {oneLine: true})}`,
      room,
      indent,
    ),
    ...(remedy === null
      ? []
      : wrapWords(`→ ${remedy}`, room - indent, 2).map((line) => `${' '.repeat(indent)}${line}`)),
  ]);
  const lacking = facts.filter(({state}) => state === 'lacks').length;
  const verdict =
    lacking === 0
      ? 'Everything that is needed is here.'
      : `${plural(lacking, 'thing is', 'things are')} lacking.`;
  return [...lines, '', verdict, ''].join('\n');
}
