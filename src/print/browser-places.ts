import {posix, win32} from 'node:path';
import type {Machine} from './machine.ts';

/** A path where a browser may be, and how to call that place. */
export interface BrowserPlace {
  readonly path: string;
  readonly origin: string;
}

/**
 * Where `puppeteer browsers install` puts browsers, the small one without windows first, newest first. The layout
 * (`<browser>/<system>-<version>/<browser>-<system>/<program>`) is that of @puppeteer/browsers 2.13.
 */
export function cachedBrowsers(machine: Machine): readonly BrowserPlace[] {
  const rules = rulesOf(machine);
  const cache = machine.env.PUPPETEER_CACHE_DIR || rules.join(machine.home, '.cache', 'puppeteer');
  const programs: readonly (readonly [string, string])[] = [
    [
      'chrome-headless-shell',
      machine.platform === 'win32' ? 'chrome-headless-shell.exe' : 'chrome-headless-shell',
    ],
    ['chrome', chromePrograms[machine.platform] ?? 'chrome'],
  ];
  return programs.flatMap(([browser, program]) =>
    machine
      .namesIn(rules.join(cache, browser))
      .toSorted(newestFirst)
      .map((version) => rules.join(cache, browser, version))
      .flatMap((folder) => machine.namesIn(folder).map((name) => rules.join(folder, name, program)))
      .map((path) => ({path, origin: "puppeteer's cache"})),
  );
}

/** Where systems keep browsers that were installed on them, the preferred one first. */
export function installedBrowsers(machine: Machine): readonly BrowserPlace[] {
  const paths =
    machine.platform === 'win32'
      ? onWindows(machine)
      : machine.platform === 'darwin'
        ? onMac(machine)
        : onLinux(machine);
  return paths.map((path) => ({path, origin: 'installed on this computer'}));
}

const chromePrograms: Readonly<Record<string, string>> = {
  win32: 'chrome.exe',
  darwin: 'Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
};

/**
 * Debian and Fedora keep the small browser beside the library files; Debian's `chromium-headless-shell` on the PATH is
 * a script that stays between us and the browser, so the program itself is named.
 */
function onLinux({env}: Machine): readonly string[] {
  const folders = [
    ...(env.PATH ?? '').split(':').filter((folder) => folder.startsWith('/')),
    '/usr/bin',
    '/usr/local/bin',
    '/snap/bin',
    '/run/current-system/sw/bin',
  ];
  const names = [
    'chromium',
    'chromium-browser',
    'google-chrome-stable',
    'google-chrome',
    'microsoft-edge-stable',
    'microsoft-edge',
  ];
  return [
    '/usr/lib/chromium/chromium-headless-shell',
    '/usr/lib64/chromium-browser/headless_shell',
    ...names.flatMap((name) => [...new Set(folders)].map((folder) => posix.join(folder, name))),
    '/opt/google/chrome/chrome',
    '/opt/microsoft/msedge/msedge',
  ];
}

function onMac({home}: Machine): readonly string[] {
  const names = ['Chromium', 'Google Chrome', 'Microsoft Edge'];
  return names.flatMap((name) =>
    ['/Applications', posix.join(home, 'Applications')].map((folder) =>
      posix.join(folder, `${name}.app`, 'Contents', 'MacOS', name),
    ),
  );
}

function onWindows({env, home}: Machine): readonly string[] {
  const programs = [
    'Chromium\\Application\\chrome.exe',
    'Google\\Chrome\\Application\\chrome.exe',
    'Microsoft\\Edge\\Application\\msedge.exe',
  ];
  const folders = [
    env.ProgramFiles ?? 'C:\\Program Files',
    env['ProgramFiles(x86)'] ?? 'C:\\Program Files (x86)',
    env.LOCALAPPDATA ?? win32.join(home, 'AppData', 'Local'),
  ];
  return programs.flatMap((program) => folders.map((folder) => win32.join(folder, program)));
}

function rulesOf(machine: Machine): typeof posix {
  return machine.platform === 'win32' ? win32 : posix;
}

/** Orders `linux-148.0.7778.97` before `linux-99.0.1.2`: by the numbers, not by the letters. */
function newestFirst(a: string, b: string): number {
  return b.localeCompare(a, 'en', {numeric: true});
}
