import {type BrowserSearch, type FoundBrowser, findBrowser} from '../print/find-browser.ts';
import type {Machine} from '../print/machine.ts';
import {OperationalError} from '../support/operational-error.ts';

/** What fetching a browser does to a computer. */
export interface SetUpWorld {
  readonly machine: Machine;
  readonly isAdministrator: boolean;
  /** Runs a program to its end and gives its exit code; null when it could not be started. */
  run(program: string, parameters: readonly string[]): Promise<number | null>;
  /** Whether puppeteer's store of browsers answers. */
  canDownload(): Promise<boolean>;
  /** Downloads puppeteer's own small browser into its cache; whether that worked. */
  download(): Promise<boolean>;
  /** Takes a downloaded browser that does not start out of the cache again, so that it is not found first. */
  discardDownload(): Promise<void>;
  /** Tells the user what takes time. */
  say(line: string): void;
}

const aptGet = '/usr/bin/apt-get';
/** Without a network apt waits for minutes unless it is told not to; while another apt runs it gives up unless told to wait. */
const aptPatience = [
  '-o',
  'Acquire::Retries=1',
  '-o',
  'Acquire::http::Timeout=20',
  '-o',
  'DPkg::Lock::Timeout=60',
];

/**
 * Sees to it that a browser is there which starts: one that is installed, else puppeteer's own download, else, for the
 * administrator of a Debian, the package. Throws `OperationalError` with one sentence that says what to do.
 */
export async function provideBrowser(world: SetUpWorld): Promise<FoundBrowser> {
  const first = search(world);
  if (first.ok && (await starts(first.browser, world))) return first.browser;
  if (!first.ok && first.isNamed) throw new OperationalError(first.message);
  if (first.ok) world.say(`The browser ${first.browser.path} does not start; looking for another.`);
  return (await byDownload(world)) ?? (await byPackage(world)) ?? giveUp(first);
}

async function byDownload(world: SetUpWorld): Promise<FoundBrowser | null> {
  if (!(await world.canDownload())) return null;
  world.say('Fetching a browser to print with, about 100 MB …');
  if (!(await world.download())) return null;
  const found = search(world);
  if (found.ok && (await starts(found.browser, world))) return found.browser;
  world.say('The browser that was fetched does not start on this computer.');
  await world.discardDownload();
  return null;
}

async function byPackage(world: SetUpWorld): Promise<FoundBrowser | null> {
  if (!world.isAdministrator || !world.machine.isProgram(aptGet)) return null;
  world.say('Installing the package chromium-headless-shell …');
  await world.run(aptGet, [...aptPatience, 'update']);
  await world.run(aptGet, [
    ...aptPatience,
    'install',
    '--yes',
    '--no-install-recommends',
    'chromium-headless-shell',
  ]);
  const found = search(world);
  return found.ok && (await starts(found.browser, world)) ? found.browser : null;
}

function giveUp(first: BrowserSearch): never {
  const fault = first.ok
    ? `the browser \`${first.browser.path}\` does not start`
    : 'there is no browser to print with';
  throw new OperationalError(
    `${fault} and none could be fetched: install Chromium, Google Chrome or Microsoft Edge, or set SWATCHLEAF_BROWSER to the path of one`,
  );
}

function search({machine}: SetUpWorld): BrowserSearch {
  return findBrowser({flag: null, setting: null, binderFolder: null}, machine);
}

/** A browser may be there and lack the system's libraries. On Windows asking for the version would open a window. */
async function starts({path}: FoundBrowser, {machine, run}: SetUpWorld): Promise<boolean> {
  return machine.platform === 'win32' || (await run(path, ['--version'])) === 0;
}
