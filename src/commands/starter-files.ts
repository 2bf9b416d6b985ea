import {fileURLToPath} from 'node:url';
import {openDiskWorkspace} from '../io/disk-workspace.ts';
import {stubTexts} from '../model/stub-text.ts';
import {invariant} from '../support/invariant.ts';
import type {StarterSettings} from './ask-for-settings.ts';

/** Where the program itself lies, with `layouts` and the worked example in it. */
const ownFolder = fileURLToPath(new URL('../../', import.meta.url));
const starterFolder = 'layouts/starter/';

/** A small binder with one item of each kind, by path within the binder folder. `today` is year-month-day. */
export async function starterFiles(
  settings: StarterSettings,
  today: string,
): Promise<ReadonlyMap<string, string>> {
  const own = await openDiskWorkspace(ownFolder);
  const files = new Map<string, string>();
  for (const file of await own.list(starterFolder.slice(0, -1))) {
    const text = (await own.readText(file)) ?? '';
    files.set(`content/${file.slice(starterFolder.length)}`, fillGaps(text, settings, today));
  }
  return files;
}

/** The worked example, by path within the binder folder. */
export async function exampleFiles(): Promise<ReadonlyMap<string, Uint8Array>> {
  const own = await openDiskWorkspace(ownFolder);
  const files = new Map<string, Uint8Array>();
  for (const file of await own.list('content'))
    files.set(file, (await own.readBytes(file)) ?? new Uint8Array());
  return files;
}

/** Fills `<<paper>>` and its like, and takes from `<<10 cm|4 in>>` the measure in the units that were chosen. */
function fillGaps(text: string, settings: StarterSettings, today: string): string {
  const {name, units} = settings;
  const values = new Map<string, string>([
    ...Object.entries({...settings, name: name === null ? stubTexts[0] : JSON.stringify(name)}),
    ['today', today],
    ['language', settings.paper === 'Letter' ? 'en-US' : 'en-GB'],
  ]);
  return text.replace(/<<(.+?)>>/g, (_, gap: string) => {
    const [metric = '', inch] = gap.split('|');
    const value = inch === undefined ? values.get(metric) : units === 'inch' ? inch : metric;
    invariant(value !== undefined, `the starter has a gap \`${gap}\` that nothing fills`);
    return value;
  });
}
