import {type ChildProcess, execFile} from 'node:child_process';
import {once} from 'node:events';
import type {Browser, ConsoleMessage, HTTPRequest, Page, Protocol} from 'puppeteer-core';
import {OperationalError} from '../support/operational-error.ts';
import {plural} from '../support/plural.ts';
import type {FoundBrowser} from './find-browser.ts';
import {makeProfileFolder} from './profile-folder.ts';

export type PrintPage = Page;
export type PrintNode = Protocol.DOM.Node;
export type PrintRequest = HTTPRequest;
export type PrintMessage = ConsoleMessage;

/** A running browser that cannot reach any network. */
export interface PrintBrowser {
  /** Its own name and version, such as `HeadlessChrome/156.0.8078.108`. */
  readonly version: string;
  /**
   * Runs `run` on an empty page, which is new or was emptied after another run: to open one takes half as long as to
   * print a short document. How it is set and who listens to it is the caller's business, before and after. Throws
   * `OperationalError` at once when the page or the browser crashes, and when `run` takes longer than `deadline` milliseconds.
   */
  withPage<T>(run: (page: PrintPage) => Promise<T>, deadline: number): Promise<T>;
}

const launchDeadline = 30_000;
const closeDeadline = 5_000;
const trialDeadline = 10_000;

/**
 * Starts the browser, lends it to `run` and ends it, whatever happens: no process and no profile folder stay behind.
 * Throws `OperationalError` when it does not start.
 *
 * This is the only module that runs puppeteer. It takes `puppeteer-core`, since `puppeteer` looks for a
 * configuration file in the current folder and would run one that came with a stranger's binder; and it loads it only
 * here, since most commands need no browser.
 */
export async function withBrowser<T>(
  found: FoundBrowser,
  run: (browser: PrintBrowser) => Promise<T>,
): Promise<T> {
  const started = startBrowser(found);
  try {
    return await run(await started.ready);
  } finally {
    await started.end();
  }
}

/** A browser on its way. Whoever started it ends it. */
export interface StartedBrowser {
  /** Rejects with `OperationalError` when it does not start; that nobody waits for it is no fault. */
  readonly ready: Promise<PrintBrowser>;
  /** Waits until neither a process nor the profile folder is left. To ask again is to wait for the same. */
  end(): Promise<void>;
}

/** Starts the browser and does not wait for it: it takes its time beside whatever else there is to do. */
export function startBrowser(found: FoundBrowser): StartedBrowser {
  const profile = makeProfileFolder();
  const browser = profile.then(({path}) => launch(found, path));
  const ready = browser.then(async (launched): Promise<PrintBrowser> => {
    const [version, pages] = await Promise.all([launched.version(), launched.pages()]);
    // The browser starts with an empty page.
    const idle = pages.map((page) => Promise.resolve(page));
    return {version, withPage: (use, deadline) => withPage(launched, idle, use, deadline)};
  });
  ready.catch(() => {});
  let ended: Promise<void> | undefined;
  const end = async () => {
    try {
      await browser.then(close, () => {});
    } finally {
      await profile.then(({remove}) => remove());
    }
  };
  return {
    ready,
    end() {
      ended ??= end();
      return ended;
    },
  };
}

async function launch(found: FoundBrowser, userDataDir: string): Promise<Browser> {
  const {launch: start} = (await import('puppeteer-core')).default;
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), launchDeadline);
  try {
    const browser = await start({
      executablePath: found.path,
      headless: found.isShell ? 'shell' : true,
      // Through a pipe the browser ends when this program does, even when it is killed.
      pipe: true,
      userDataDir,
      env: browserEnvironment(userDataDir),
      args: browserArguments(),
      signal: patience.signal,
      timeout: launchDeadline,
      protocolTimeout: 0,
      // Signals end the whole program, which decides how; puppeteer's own handlers would keep it running.
      handleSIGINT: false,
      handleSIGTERM: false,
      handleSIGHUP: false,
    });
    // Before its profile folder is removed: one that still runs would write into it again.
    const child = browser.process();
    const killNow = () => child && kill(child);
    process.prependOnceListener('exit', killNow);
    child?.once('exit', () => process.off('exit', killNow));
    return browser;
  } catch (error) {
    const fault = await startFault(found, userDataDir);
    const browser = `the browser \`${found.path}\` (${found.origin})`;
    throw new OperationalError(
      `${browser} does not start: ${fault}; name another one with \`--browser PATH\``,
      {
        cause: error,
      },
    );
  } finally {
    clearTimeout(timer);
  }
}

/**
 * Full Chromium keeps a socket in the temporary folder, which stays when it is killed; so that is the profile folder
 * too. The path of a socket may have 107 letters at most, of which Chromium needs 45 for itself.
 */
function browserEnvironment(userDataDir: string): NodeJS.ProcessEnv {
  return userDataDir.length > 60 ? process.env : {...process.env, TMPDIR: userDataDir};
}

function browserArguments(): string[] {
  return [
    // A dead proxy for every address, this computer's own included, and no name that resolves.
    '--proxy-server=127.0.0.1:1',
    '--proxy-bypass-list=<-loopback>',
    '--host-resolver-rules=MAP * ~NOTFOUND',
    '--dns-prefetch-disable',
    '--disable-quic',
    '--disable-gpu',
    // Windows of full Chromium that start with it and are never seen; without them it prints in 0.86 of the time.
    '--disable-features=WebUIOmniboxPopup,WebUIOmniboxFullPopup,WebUIOmniboxAimPopup',
    // Chromium refuses to start for the administrator with its sandbox on.
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  ];
}

/**
 * Why the browser does not start, in its own words: through a pipe puppeteer only learns that it is gone, so it is
 * started once more by hand and its error output read.
 */
async function startFault({path}: FoundBrowser, userDataDir: string): Promise<string> {
  const trial = [
    ...browserArguments(),
    '--headless',
    `--user-data-dir=${userDataDir}`,
    '--dump-dom',
    'about:blank',
  ];
  const output = await new Promise<string>((resolve) => {
    execFile(path, trial, {timeout: trialDeadline, killSignal: 'SIGKILL'}, (error, _stdout, stderr) =>
      resolve(`${stderr}\n${error?.message ?? ''}`),
    );
  });
  const lines = output.split('\n').map((line) => line.trim());
  const telling = lines.find((line) =>
    /error while loading|no usable sandbox|denied|cannot|failed/i.test(line),
  );
  return telling?.replace(/[.:]$/, '') ?? 'it ends at once, without a reason';
}

/** Takes one of the `idle` pages, where there is one, and puts its page there afterwards, unless `run` fails. */
async function withPage<T>(
  browser: Browser,
  idle: Promise<Page>[],
  run: (page: Page) => Promise<T>,
  deadline: number,
): Promise<T> {
  const {PuppeteerError} = await import('puppeteer-core');
  let fail: (reason: OperationalError) => void = () => {};
  const trouble = new Promise<never>((_, reject) => {
    fail = reject;
  });
  trouble.catch(() => {}); // It may come between two races; the next one tells it.
  const stopped = (cause?: Error) =>
    fail(new OperationalError('the browser stopped while printing: try again', {cause}));
  const gone = () => stopped();
  const patience = plural(Math.round(deadline / 1000), 'second');
  const timer = setTimeout(() => {
    fail(new OperationalError(`the browser did not finish printing within ${patience}: try again`));
  }, deadline);
  browser.once('disconnected', gone);
  try {
    const page = await Promise.race([idle.pop() ?? browser.newPage(), trouble]);
    page.once('error', stopped);
    const result = await Promise.race([run(page), trouble]);
    page.off('error', stopped);
    const emptied = page.goto('about:blank', {timeout: 0}).then(() => page);
    emptied.catch(() => {}); // Whoever takes it next is told; the browser may end before.
    idle.push(emptied);
    return result;
  } catch (error) {
    // A call that was under way when the browser went may fail before the browser's end is told.
    if (error instanceof PuppeteerError) {
      throw new OperationalError(
        `the browser failed while printing (${error.message.split('\n')[0]}): try again`,
        {
          cause: error,
        },
      );
    }
    throw error;
  } finally {
    clearTimeout(timer);
    browser.off('disconnected', gone);
  }
}

/** Asks the browser to end, ends it when it does not answer, and waits until it has. */
async function close(browser: Browser): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const patience = new Promise<void>((resolve) => {
    timer = setTimeout(resolve, closeDeadline);
  });
  await Promise.race([browser.close().catch(() => {}), patience]);
  clearTimeout(timer);
  const child = browser.process();
  if (child?.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  const ended = once(child, 'exit');
  kill(child);
  await ended;
}

function kill({pid}: ChildProcess): void {
  if (pid === undefined) return;
  try {
    // puppeteer makes the browser the leader of a group of its own, except on Windows.
    process.kill(process.platform === 'win32' ? pid : -pid, 'SIGKILL');
  } catch {
    // It is ending already.
  }
}
