import {posix, win32} from 'node:path';
import {OperationalError} from '../support/operational-error.ts';
import {cachedBrowsers, installedBrowsers} from './browser-places.ts';
import type {Machine} from './machine.ts';

/** Who named a browser. Null where nobody did. */
export interface BrowserWishes {
  /** The command line: `--browser PATH`. */
  readonly flag: string | null;
  /** `browser` in the binder file, which may come from a stranger. */
  readonly setting: string | null;
  /** The binder folder, absolute: nothing inside it is ever run. */
  readonly binderFolder: string | null;
}

export interface FoundBrowser {
  readonly path: string;
  /** Whether it is the small browser without windows: it starts and prints in about 0.6 of the time. */
  readonly isShell: boolean;
  /** Who named it or where it was found, in words for the user. */
  readonly origin: string;
}

export type BrowserSearch =
  | {readonly ok: true; readonly browser: FoundBrowser}
  /** `message` is one sentence that says what to do; `isNamed` when somebody named a browser that cannot be used. */
  | {
      readonly ok: false;
      readonly message: string;
      readonly lookedAt: readonly string[];
      readonly isNamed: boolean;
    };

/**
 * The browser to print with: the one named by the command line, else by the environment, else by the binder file,
 * else the first that puppeteer's cache or the system has. A browser that was named and is not there is never
 * replaced by another in silence: two browsers break lines differently.
 */
export function findBrowser(wishes: BrowserWishes, machine: Machine): BrowserSearch {
  const named = [
    {origin: '`--browser`', path: wishes.flag},
    {origin: '`SWATCHLEAF_BROWSER`', path: machine.env.SWATCHLEAF_BROWSER},
    {origin: '`PUPPETEER_EXECUTABLE_PATH`', path: machine.env.PUPPETEER_EXECUTABLE_PATH},
    {origin: 'the binder file', path: wishes.setting},
  ].find(({path}) => path);
  if (named?.path) return useNamed(named.path, named.origin, wishes, machine);

  const places = [...cachedBrowsers(machine), ...installedBrowsers(machine)];
  const place = places.find(({path}) => machine.isProgram(path));
  if (place !== undefined) return found(place.path, place.origin);
  return {
    ok: false,
    message:
      'no browser to print with was found: install Chromium, Google Chrome or Microsoft Edge, or name one with `--browser PATH`',
    lookedAt: places.map(({path}) => path),
    isNamed: false,
  };
}

/** As `findBrowser`, for those who cannot go on without one. Throws `OperationalError`. */
export function requireBrowser(wishes: BrowserWishes, machine: Machine): FoundBrowser {
  const search = findBrowser(wishes, machine);
  if (!search.ok) throw new OperationalError(search.message);
  return search.browser;
}

function useNamed(name: string, origin: string, wishes: BrowserWishes, machine: Machine): BrowserSearch {
  const rules = machine.platform === 'win32' ? win32 : posix;
  const isBareName = !/[\\/]/.test(name);
  const onPath = (machine.env.PATH ?? '').split(rules.delimiter).map((folder) => rules.join(folder, name));
  const lookedAt = isBareName ? onPath : [name];
  const path = lookedAt.find((each) => rules.isAbsolute(each) && machine.isProgram(each));
  const refuse = (fault: string): BrowserSearch => {
    return {ok: false, message: `${origin} names the browser \`${name}\`, ${fault}`, lookedAt, isNamed: true};
  };
  if (path === undefined) return refuse('but no program is there: give its whole path, or leave it out');
  if (wishes.binderFolder !== null && isWithin(wishes.binderFolder, path, rules)) {
    return refuse('which lies in the binder folder, where nothing is ever run: name another');
  }
  return found(path, origin);
}

function isWithin(folder: string, path: string, rules: typeof posix): boolean {
  const relative = rules.relative(folder, path);
  return relative.split(rules.sep)[0] !== '..' && !rules.isAbsolute(relative);
}

function found(path: string, origin: string): BrowserSearch {
  return {ok: true, browser: {path, isShell: /headless[-_]shell(\.exe)?$/i.test(path), origin}};
}
