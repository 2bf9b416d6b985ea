import {execFileSync, spawn} from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {afterEach, beforeEach, describe, expect, test} from 'vitest';
import {withBrowser} from '../../src/print/browser.ts';
import {type FoundBrowser, requireBrowser} from '../../src/print/find-browser.ts';
import {thisMachine} from '../../src/print/machine.ts';
import {OperationalError} from '../../src/support/operational-error.ts';

const found = requireBrowser({flag: null, setting: null, binderFolder: null}, thisMachine());

/** A temporary folder of our own, so that the leavings of others are not taken for ours. */
let temporary = '';
let before: string | undefined;
beforeEach(() => {
  temporary = mkdtempSync(join(tmpdir(), 'swatchleaf-test-'));
  before = process.env.TMPDIR;
  process.env.TMPDIR = temporary;
});
afterEach(() => {
  if (before === undefined) delete process.env.TMPDIR;
  else process.env.TMPDIR = before;
  rmSync(temporary, {recursive: true});
});

/** The profile folder while a browser runs. */
function profile(): string {
  const [name = 'none'] = readdirSync(temporary).filter((each) => each.startsWith('swatchleaf-'));
  return join(temporary, name);
}

/** The running processes whose command line names our temporary folder: the browser and its children. */
function browserProcesses(): {id: number; command: string}[] {
  return runningProcesses().filter(({command}) => command.includes(temporary));
}

function runningProcesses(): {id: number; command: string}[] {
  if (!existsSync('/proc/self')) {
    const lines = execFileSync('ps', ['-axo', 'pid=,command='], {encoding: 'utf8'}).trim().split('\n');
    return lines.map((line) => ({id: Number.parseInt(line, 10), command: line}));
  }
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map((name) => {
      try {
        return {id: Number(name), command: readFileSync(`/proc/${name}/cmdline`, 'utf8')};
      } catch {
        return {id: Number(name), command: ''};
      }
    });
}

/** The browser itself, not one of its helpers. */
function leader(): number {
  const [first] = browserProcesses().filter(({command}) => !command.includes('--type='));
  return first?.id ?? Number.NaN;
}

test('the browser has a private folder while it runs, and nothing of it stays', async () => {
  const version = await withBrowser(found, async (browser) => {
    expect(statSync(profile()).mode & 0o777).toBe(0o700);
    await browser.withPage(async (page) => expect(page.url()).toBe('about:blank'), 30_000);
    return browser.version;
  });
  expect(version).toMatch(/Chrome\/\d+\./);
  expect(readdirSync(temporary)).toEqual([]);
  await expect.poll(browserProcesses).toEqual([]);
});

test('a page is lent again when it was emptied, and two at once are two', async () => {
  await withBrowser(found, async (browser) => {
    const first = await browser.withPage(async (page) => {
      await page.setContent('<title>One</title><p id="left">left');
      return page;
    }, 30_000);
    await browser.withPage(async (page) => {
      expect(page).toBe(first);
      expect(await page.content()).toBe('<html><head></head><body></body></html>');
      await browser.withPage(async (beside) => expect(beside).not.toBe(page), 30_000);
    }, 30_000);
    // One that failed is in who knows what state.
    const failed = browser.withPage(() => Promise.reject(new Error('ours')), 30_000);
    await expect(failed).rejects.toThrow('ours');
    await Promise.all([1, 2].map(() => browser.withPage(async (page) => page.title(), 30_000)));
  });
});

test('what the caller throws comes through, and nothing stays', async () => {
  const ours = new Error('ours');
  await expect(
    withBrowser(found, (browser) => browser.withPage(() => Promise.reject(ours), 30_000)),
  ).rejects.toBe(ours);
  expect(readdirSync(temporary)).toEqual([]);
  await expect.poll(browserProcesses).toEqual([]);
});

describe('a browser in trouble is told in one line, and nothing stays', () => {
  const waiting = () => new Promise<never>(() => {});

  test.each<[string, () => void]>([
    ['killed', () => process.kill(leader(), 'SIGKILL')],
    ['ended', () => process.kill(leader(), 'SIGTERM')],
  ])('%s from outside while a page waits', async (_, end) => {
    const run = withBrowser(found, (browser) =>
      browser.withPage(async () => {
        end();
        return waiting();
      }, 600_000),
    );
    await expect(run).rejects.toThrow(new OperationalError('the browser stopped while printing: try again'));
    expect(readdirSync(temporary)).toEqual([]);
    await expect.poll(browserProcesses).toEqual([]);
  });

  test('killed in the middle of printing', async () => {
    const long = `<p>${'Knit to the last two stitches. '.repeat(300_000)}</p>`;
    const run = withBrowser(found, (browser) =>
      browser.withPage(async (page) => {
        await page.setContent(long);
        const printing = page.pdf({timeout: 0});
        process.kill(leader(), 'SIGKILL');
        return printing;
      }, 600_000),
    );
    await expect(run).rejects.toThrow(OperationalError);
    expect(readdirSync(temporary)).toEqual([]);
    await expect.poll(browserProcesses).toEqual([]);
  });

  test('a page that crashes', async () => {
    const run = withBrowser(found, (browser) =>
      browser.withPage(async (page) => {
        void page.goto('chrome://crash').catch(() => {});
        return waiting();
      }, 600_000),
    );
    await expect(run).rejects.toThrow(new OperationalError('the browser stopped while printing: try again'));
    expect(readdirSync(temporary)).toEqual([]);
  });

  test('a page that never ends, and a browser that no longer answers', async () => {
    const run = withBrowser(found, (browser) =>
      browser.withPage(async () => {
        process.kill(leader(), 'SIGSTOP');
        return waiting();
      }, 1_000),
    );
    await expect(run).rejects.toThrow(
      new OperationalError('the browser did not finish printing within 1 second: try again'),
    );
    expect(readdirSync(temporary)).toEqual([]);
    await expect.poll(browserProcesses).toEqual([]);
  });
});

describe('a browser that does not start', () => {
  const named = (path: string): FoundBrowser => ({path, isShell: true, origin: '`--browser`'});
  const script = (text: string) => {
    const path = join(temporary, 'not-a-browser');
    writeFileSync(path, `#!/bin/sh\n${text}\n`, {mode: 0o755});
    return path;
  };

  test.each<[string, string, RegExp]>([
    [
      'because a library is missing',
      'echo "not-a-browser: error while loading shared libraries: libnss3.so: cannot open shared object file" >&2; exit 127',
      /does not start: .*libnss3\.so: cannot open shared object file; name another one with `--browser PATH`$/,
    ],
    ['because it ends at once', 'exit 0', /does not start: .+; name another one/],
    [
      'because it has no rights to',
      'echo "mkdir: permission denied" >&2; exit 1',
      /does not start: mkdir: permission denied; name/,
    ],
  ])('%s', async (_, text, message) => {
    const path = script(text);
    const run = withBrowser(named(path), async () => 'never');
    await expect(run).rejects.toThrow(message);
    await expect(run).rejects.toThrow(OperationalError);
    await expect(run).rejects.toThrow(`the browser \`${path}\` (\`--browser\`)`);
    expect(readdirSync(temporary)).toEqual(['not-a-browser']);
  });
});

test('what a killed run left is removed by the next one, and what belongs to a living one is not', async () => {
  const ended = spawn(process.execPath, ['--version'], {stdio: 'ignore'});
  await new Promise((resolve) => ended.once('exit', resolve));
  const left = join(temporary, `swatchleaf-${ended.pid}-abcdef`);
  const living = join(temporary, `swatchleaf-${process.ppid}-abcdef`);
  const foreign = join(temporary, 'swatchleaf-notes');
  for (const folder of [left, living, foreign]) {
    mkdirSync(folder);
    writeFileSync(join(folder, 'x'), '');
  }
  await withBrowser(found, async () => {});
  expect([left, living, foreign].map(existsSync)).toEqual([false, true, true]);
});
