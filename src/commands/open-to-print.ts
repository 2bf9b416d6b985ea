import {type PrintBrowser, startBrowser} from '../print/browser.ts';
import {type BrowserWishes, findBrowser, requireBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import {browserSetting} from './browser-setting.ts';
import type {Surroundings} from './command.ts';
import {type OpenedBinder, openFolder, readBinder} from './open-binder.ts';

export interface PrintWishes {
  /** Path of the browser, from the command line; null where none was named. */
  readonly browser: string | null;
}

/** The browser that was started, once it can print. Throws `OperationalError` when there is none or it does not start. */
export type Ready = () => Promise<PrintBrowser>;

/**
 * Reads and checks the binder in `folder` while the browser starts beside it, lends both to `use` and ends the browser,
 * whatever happens. That there is none is told only when it is asked for. Throws as `openBinder` does.
 */
export async function openToPrint<T>(
  folder: string,
  around: Surroundings,
  {browser}: PrintWishes,
  use: (opened: OpenedBinder, ready: Ready) => Promise<T>,
): Promise<T> {
  const opened = await openFolder(folder, around);
  const wishes: BrowserWishes = {
    flag: browser,
    setting: await browserSetting(opened.workspace),
    binderFolder: opened.folder,
  };
  const search = findBrowser(wishes, thisMachine());
  if (!search.ok) {
    return use(await readBinder(opened, around), async () => {
      requireBrowser(wishes, thisMachine());
      throw new Error('unreachable');
    });
  }
  const started = startBrowser(search.browser);
  try {
    return await use(await readBinder(opened, around), () => started.ready);
  } finally {
    await started.end();
  }
}
