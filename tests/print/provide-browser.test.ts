import {describe, expect, test} from 'vitest';
import {provideBrowser, type SetUpWorld} from '../../src/dev/provide-browser.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

const debianShell = '/usr/lib/chromium/chromium-headless-shell';
const cached =
  '/home/marit/.cache/puppeteer/chrome-headless-shell/linux-148.0.7778.97/chrome-headless-shell-linux64/chrome-headless-shell';

interface Computer {
  readonly platform?: string;
  readonly programs?: readonly string[];
  /** Programs that are there and do not start. */
  readonly broken?: readonly string[];
  readonly isAdministrator?: boolean;
  readonly hasNetwork?: boolean;
  readonly env?: Readonly<Record<string, string>>;
}

/** A computer that a set-up may change, and the list of what it did. */
function computer({
  platform = 'linux',
  programs = [],
  broken = [],
  isAdministrator = false,
  hasNetwork = false,
  env = {},
}: Computer) {
  const present = new Set(programs);
  const done: string[] = [];
  const world: SetUpWorld = {
    machine: {
      platform,
      env: {PATH: '/usr/bin', ...env},
      home: '/home/marit',
      isProgram: (path) => present.has(path),
      namesIn: (folder) => [
        ...new Set(
          [...present]
            .filter((path) => path.startsWith(`${folder}/`))
            .map((path) => path.slice(folder.length + 1).split('/')[0] ?? ''),
        ),
      ],
    },
    isAdministrator,
    async run(program, parameters) {
      if (parameters.includes('--version')) return broken.includes(program) ? 127 : 0;
      done.push(parameters.includes('update') ? 'apt-get update' : 'apt-get install');
      if (!hasNetwork) return 100;
      if (parameters.includes('install')) present.add(debianShell);
      return 0;
    },
    canDownload: async () => hasNetwork,
    async download() {
      done.push('download');
      present.add(cached);
      return true;
    },
    async discardDownload() {
      done.push('discard');
      present.delete(cached);
    },
    say: () => {},
  };
  return {world, done};
}

describe('a browser is provided', () => {
  const debian = {isAdministrator: true, hasNetwork: true};
  test.each<[string, Computer, string, readonly string[]]>([
    [
      'one that is there is taken, and nothing is fetched',
      {programs: [debianShell], hasNetwork: true},
      debianShell,
      [],
    ],
    ['none: the download', {hasNetwork: true}, cached, ['download']],
    [
      'one that does not start: the download',
      {programs: ['/usr/bin/chromium'], broken: ['/usr/bin/chromium'], hasNetwork: true},
      cached,
      ['download'],
    ],
    [
      'a download that does not start, for the administrator of a Debian: the package',
      {...debian, programs: ['/usr/bin/apt-get'], broken: [cached]},
      debianShell,
      ['download', 'discard', 'apt-get update', 'apt-get install'],
    ],
    [
      'Windows: what is there is not started to find out',
      {platform: 'win32', programs: ['C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe']},
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
      [],
    ],
  ])('%s', async (_, parts, path, did) => {
    const {world, done} = computer(parts);
    expect((await provideBrowser(world)).path).toBe(path);
    expect(done).toEqual(did);
  });
});

describe('when none can be provided, one sentence says what to do', () => {
  const advice =
    'install Chromium, Google Chrome or Microsoft Edge, or set SWATCHLEAF_BROWSER to the path of one';
  test.each<[string, Computer, string, readonly string[]]>([
    ['no network', {}, 'there is no browser to print with', []],
    [
      'no network, on Debian',
      {isAdministrator: true, programs: ['/usr/bin/apt-get']},
      'there is no browser to print with',
      ['apt-get update', 'apt-get install'],
    ],
    [
      'no rights to install',
      {hasNetwork: true, programs: ['/usr/bin/apt-get'], broken: [cached]},
      'there is no browser to print with',
      ['download', 'discard'],
    ],
    [
      'a browser without its libraries',
      {programs: [debianShell], broken: [debianShell]},
      `the browser \`${debianShell}\` does not start`,
      [],
    ],
  ])('%s', async (_, parts, fault, did) => {
    const {world, done} = computer(parts);
    await expect(provideBrowser(world)).rejects.toThrow(
      new OperationalError(`${fault} and none could be fetched: ${advice}`),
    );
    expect(done).toEqual(did);
  });

  test('a browser that the environment names and that is not there: nothing is fetched in its place', async () => {
    const {world, done} = computer({env: {SWATCHLEAF_BROWSER: '/opt/none'}, hasNetwork: true});
    await expect(provideBrowser(world)).rejects.toThrow(
      '`SWATCHLEAF_BROWSER` names the browser `/opt/none`, but no program is there: give its whole path, or leave it out',
    );
    expect(done).toEqual([]);
  });
});
