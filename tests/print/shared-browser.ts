import {afterAll, beforeAll} from 'vitest';
import {type PrintBrowser, withBrowser} from '../../src/print/browser.ts';
import {requireBrowser} from '../../src/print/find-browser.ts';
import {thisMachine} from '../../src/print/machine.ts';

export const foundBrowser = requireBrowser({flag: null, setting: null, binderFolder: null}, thisMachine());

/** One browser for all tests of a file, started before the first and ended after the last. */
export function sharedBrowser(): () => PrintBrowser {
  let browser: PrintBrowser | undefined;
  let release = () => {};
  let ended: Promise<void> = Promise.resolve();
  beforeAll(async () => {
    await new Promise<void>((resolve, reject) => {
      ended = withBrowser(foundBrowser, (started) => {
        browser = started;
        resolve();
        return new Promise<void>((end) => {
          release = end;
        });
      });
      ended.catch(reject);
    });
  });
  afterAll(async () => {
    release();
    await ended;
  });
  return () => {
    if (browser === undefined) throw new Error('the browser is only there while tests run');
    return browser;
  };
}
