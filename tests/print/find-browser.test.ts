import {describe, expect, test} from 'vitest';
import {type BrowserWishes, findBrowser, requireBrowser} from '../../src/print/find-browser.ts';
import type {Machine} from '../../src/print/machine.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

const nobody: BrowserWishes = {flag: null, setting: null, binderFolder: null};

/** A computer on which these programs, and no others, may be run. */
function machine(platform: string, programs: readonly string[], env: Record<string, string> = {}): Machine {
  const separator = platform === 'win32' ? '\\' : '/';
  return {
    platform,
    env,
    home: {linux: '/home/marit', darwin: '/Users/marit', win32: 'C:\\Users\\marit'}[platform] ?? '/',
    isProgram: (path) => programs.includes(path),
    namesIn(folder) {
      const start = folder + separator;
      const below = programs.filter((path) => path.startsWith(start));
      return [...new Set(below.map((path) => path.slice(start.length).split(separator)[0] ?? ''))];
    },
  };
}

const debianShell = '/usr/lib/chromium/chromium-headless-shell';
const linuxCache = '/home/marit/.cache/puppeteer';
const cachedShell = `${linuxCache}/chrome-headless-shell/linux-148.0.7778.97/chrome-headless-shell-linux64/chrome-headless-shell`;
const cachedChrome = `${linuxCache}/chrome/linux-148.0.7778.97/chrome-linux64/chrome`;
const path = {PATH: '/usr/local/bin:/usr/bin:/bin'};

describe('the first of these that is there is used', () => {
  test.each<[string, string, readonly string[], string]>([
    [
      'Debian: the small browser before the large one',
      'linux',
      ['/usr/bin/chromium', debianShell],
      debianShell,
    ],
    [
      'Debian: never the script in front of the small one',
      'linux',
      ['/usr/bin/chromium-headless-shell', '/usr/bin/chromium'],
      '/usr/bin/chromium',
    ],
    [
      'Fedora',
      'linux',
      ['/usr/lib64/chromium-browser/headless_shell'],
      '/usr/lib64/chromium-browser/headless_shell',
    ],
    ['Alpine', 'linux', ['/usr/bin/chromium-browser'], '/usr/bin/chromium-browser'],
    [
      'Linux: Chromium before Chrome before Edge',
      'linux',
      ['/usr/bin/microsoft-edge', '/usr/bin/google-chrome', '/usr/bin/chromium'],
      '/usr/bin/chromium',
    ],
    ['Linux: Chrome', 'linux', ['/usr/bin/google-chrome'], '/usr/bin/google-chrome'],
    [
      'Linux: Chrome without a link on the PATH',
      'linux',
      ['/opt/google/chrome/chrome'],
      '/opt/google/chrome/chrome',
    ],
    ['Linux: Edge', 'linux', ['/opt/microsoft/msedge/msedge'], '/opt/microsoft/msedge/msedge'],
    ['Ubuntu: the snap', 'linux', ['/snap/bin/chromium'], '/snap/bin/chromium'],
    [
      "Linux: puppeteer's cache before all that is installed",
      'linux',
      [debianShell, cachedChrome],
      cachedChrome,
    ],
    ["Linux: of puppeteer's cache the small one", 'linux', [cachedChrome, cachedShell], cachedShell],
    [
      "Linux: of puppeteer's cache the newest, by number",
      'linux',
      ['99.0.1.2', '148.0.7778.97', '148.0.999.1'].map((version) =>
        cachedShell.replace('148.0.7778.97', version),
      ),
      cachedShell,
    ],
    [
      'macOS: Chrome',
      'darwin',
      ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ],
    [
      'macOS: for one user only',
      'darwin',
      ['/Users/marit/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge'],
      '/Users/marit/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
    ],
    [
      "macOS: puppeteer's cache",
      'darwin',
      [
        '/Users/marit/.cache/puppeteer/chrome/mac_arm-148.0.7778.97/chrome-mac-arm64/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
      ],
      '/Users/marit/.cache/puppeteer/chrome/mac_arm-148.0.7778.97/chrome-mac-arm64/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
    ],
    [
      'Windows: Chrome',
      'win32',
      ['C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe'],
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    ],
    [
      'Windows: Chrome for one user only',
      'win32',
      ['C:\\Users\\marit\\AppData\\Local\\Google\\Chrome\\Application\\chrome.exe'],
      'C:\\Users\\marit\\AppData\\Local\\Google\\Chrome\\Application\\chrome.exe',
    ],
    [
      'Windows: Edge, which every Windows has',
      'win32',
      ['C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe'],
      'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
    ],
    [
      "Windows: puppeteer's cache",
      'win32',
      [
        'C:\\Users\\marit\\.cache\\puppeteer\\chrome-headless-shell\\win64-148.0.7778.97\\chrome-headless-shell-win64\\chrome-headless-shell.exe',
      ],
      'C:\\Users\\marit\\.cache\\puppeteer\\chrome-headless-shell\\win64-148.0.7778.97\\chrome-headless-shell-win64\\chrome-headless-shell.exe',
    ],
  ])('%s', (_, platform, programs, expected) => {
    const env: Record<string, string> = platform === 'linux' ? path : {};
    const search = findBrowser(nobody, machine(platform, programs, env));
    expect(search).toMatchObject({ok: true, browser: {path: expected, isShell: /shell/.test(expected)}});
  });

  test('the folders that the system names in its environment', () => {
    const edge = 'D:\\Programme\\Microsoft\\Edge\\Application\\msedge.exe';
    expect(findBrowser(nobody, machine('win32', [edge], {ProgramFiles: 'D:\\Programme'}))).toMatchObject({
      browser: {path: edge},
    });
    const moved = cachedShell.replace(linuxCache, '/srv/browsers');
    expect(
      findBrowser(nobody, machine('linux', [moved], {PUPPETEER_CACHE_DIR: '/srv/browsers'})),
    ).toMatchObject({browser: {path: moved}});
  });
});

describe('a browser that somebody named', () => {
  const programs = [debianShell, '/opt/a', '/opt/b', '/opt/c', '/opt/d', '/usr/bin/chromium'];
  const env = {...path, SWATCHLEAF_BROWSER: '/opt/b', PUPPETEER_EXECUTABLE_PATH: '/opt/c'};

  test.each<[string, BrowserWishes, Record<string, string>, string, string]>([
    [
      'the command line before all',
      {...nobody, flag: '/opt/a', setting: '/opt/d'},
      env,
      '/opt/a',
      '`--browser`',
    ],
    ['our own variable next', {...nobody, setting: '/opt/d'}, env, '/opt/b', '`SWATCHLEAF_BROWSER`'],
    [
      "puppeteer's variable next",
      {...nobody, setting: '/opt/d'},
      {...env, SWATCHLEAF_BROWSER: ''},
      '/opt/c',
      '`PUPPETEER_EXECUTABLE_PATH`',
    ],
    ['the binder file last', {...nobody, setting: '/opt/d'}, path, '/opt/d', 'the binder file'],
    [
      'a name without a path is looked up',
      {...nobody, flag: 'chromium'},
      path,
      '/usr/bin/chromium',
      '`--browser`',
    ],
  ])('%s', (_, wishes, variables, expected, origin) => {
    expect(findBrowser(wishes, machine('linux', programs, variables))).toEqual({
      ok: true,
      browser: {path: expected, isShell: false, origin},
    });
  });

  test.each<[string, BrowserWishes]>([
    ['that is not there', {...nobody, flag: '/opt/none'}],
    ['by a path that depends on where one stands', {...nobody, setting: 'opt/a'}],
    ['by a name that is nowhere on the PATH', {...nobody, flag: 'firefox'}],
  ])('%s is not replaced by another', (_, wishes) => {
    expect(() => requireBrowser(wishes, machine('linux', programs, path))).toThrow(
      /^`--browser` names the browser|^the binder file names the browser/,
    );
  });

  test.each([
    ['linux', '/home/marit/binder', '/home/marit/binder/photos/evil', '/home/marit/binder 2/chromium'],
    ['win32', 'C:\\Users\\marit\\binder', 'c:\\users\\marit\\BINDER\\evil.exe', 'D:\\chrome.exe'],
  ])('inside the binder folder is never run (%s)', (platform, binderFolder, inside, outside) => {
    const world = machine(platform, [inside, outside]);
    expect(() => requireBrowser({...nobody, setting: inside, binderFolder}, world)).toThrow(
      /lies in the binder folder/,
    );
    expect(requireBrowser({...nobody, setting: outside, binderFolder}, world).path).toBe(outside);
  });
});

describe('no browser at all', () => {
  test.each(['linux', 'darwin', 'win32', 'freebsd'])(
    '%s: one sentence says what to do, and where we looked is known',
    (platform) => {
      const search = findBrowser(nobody, machine(platform, []));
      expect(search).toMatchObject({ok: false});
      if (!search.ok) expect(search.lookedAt.length).toBeGreaterThan(5);
      expect(() => requireBrowser(nobody, machine(platform, []))).toThrow(
        new OperationalError(
          'no browser to print with was found: install Chromium, Google Chrome or Microsoft Edge, or name one with `--browser PATH`',
        ),
      );
    },
  );
});
