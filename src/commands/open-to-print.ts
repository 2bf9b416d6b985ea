import {type PrintBrowser, type StartedBrowser, startBrowser} from '../print/browser.ts';
import {findBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import {OperationalError} from '../support/operational-error.ts';
import {browserSetting} from './browser-setting.ts';
import type {Surroundings} from './command.ts';
import {type OpenedBinder, openFolder, readBinder} from './open-binder.ts';

export interface PrintWishes {
  /** Path of the browser, from the command line; null where none was named. */
  readonly browser: string | null;
}

/** A browser for the time of one command. */
export interface LentBrowser {
  /** Rejects with `OperationalError` when there is none, or when it does not start. */
  readonly ready: Promise<PrintBrowser>;
  /** Lets the browser end beside what is left to do. */
  allPrinted(): void;
}

/**
 * Reads and checks the binder in `folder` while the browser starts beside it, lends both to `use` and ends the browser,
 * whatever happens. Throws as `openBinder` does.
 */
export async function openToPrint<T>(
  folder: string,
  around: Surroundings,
  {browser}: PrintWishes,
  use: (opened: OpenedBinder, lent: LentBrowser) => Promise<T>,
): Promise<T> {
  const opened = await openFolder(folder, around);
  const setting = await browserSetting(opened.workspace);
  const search = findBrowser({flag: browser, setting, binderFolder: opened.folder}, thisMachine());
  const started = search.ok ? startBrowser(search.browser) : noBrowser(search.message);
  try {
    // What goes wrong at the end is told below.
    const allPrinted = () => void started.end().catch(() => {});
    return await use(await readBinder(opened, around), {ready: started.ready, allPrinted});
  } finally {
    await started.end();
  }
}

function noBrowser(message: string): StartedBrowser {
  const ready = Promise.reject(new OperationalError(message));
  ready.catch(() => {});
  return {ready, end: async () => {}};
}
