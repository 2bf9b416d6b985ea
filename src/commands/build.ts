import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {renderLeaves} from '../layout/render-leaves.ts';
import type {Binder} from '../model/binder.ts';
import {withBrowser} from '../print/browser.ts';
import {requireBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import {requireSheets, type SheetWishes, sheetsOfSection} from './choose-sheets.ts';
import type {Outcome, Surroundings} from './command.ts';
import {removeOldParts} from './last-built.ts';
import {type OpenedBinder, openBinder} from './open-binder.ts';
import {prepareLayout} from './prepare-layout.ts';
import {printBinder} from './print-binder.ts';
import {printChanged} from './print-changed.ts';
import {printOnly} from './print-only.ts';

export interface PrintWishes {
  /** Path of the browser, from the command line; null where none was named. */
  readonly browser: string | null;
}

export interface BuildWishes extends PrintWishes, SheetWishes {
  /** Whether the leaves that differ from the ledger are printed as well. */
  readonly changed: boolean;
}

/**
 * Checks and prints everything into `build`, or only some sheets. A file there is replaced only by a whole new one, and
 * only after all of them were printed; while an error stands, every leaf of the binder is marked as a draft. Parts that an
 * earlier build made are removed: they may no longer be what the binder says.
 */
export async function runBuild(folder: string, around: Surroundings, wishes: BuildWishes): Promise<Outcome> {
  const opened = await openBinder(folder, around);
  const {binder, textOf, workspace} = opened;
  if (binder === null) return {findings: opened.findings, textOf, written: [], isBroken: true};
  const input = await prepareLayout(opened, binder);
  const {progress} = around;
  const names = chooseSheets(input, wishes);
  const {files, findings, text} = await withBrowser(
    findBrowserFor(opened, binder, wishes),
    async (browser) => {
      if (names !== null) return {...(await printOnly(browser, opened, input, names, progress)), text: ''};
      const whole = await printBinder(browser, opened, input, progress);
      if (!wishes.changed) return {...whole, text: ''};
      const changes = await printChanged(browser, whole, progress);
      return {
        files: new Map([...whole.files, ...changes.files]),
        findings: sortFindings([...whole.findings, ...changes.findings]),
        text: changes.text,
      };
    },
  );
  for (const [path, content] of files) await workspace.write(path, content);
  await removeOldParts(workspace, files.keys(), progress);
  return {findings, textOf, written: [...files.keys()], isBroken: false, text};
}

export function findBrowserFor({folder}: OpenedBinder, {settings}: Binder, {browser}: PrintWishes) {
  return requireBrowser(
    {flag: browser, setting: settings.browser ?? null, binderFolder: folder},
    thisMachine(),
  );
}

/** The names of the sheets to print; null for the whole binder. Throws `UsageError` for one that there is not. */
function chooseSheets(input: LayoutInput, {only, section}: SheetWishes): ReadonlySet<string> | null {
  if (only.length === 0 && section === null) return null;
  const known = new Set(renderLeaves(input, new Map(), null).sheets.map(({label}) => label));
  requireSheets(only, known, 'the binder');
  const inSection = section === null ? [] : sheetsOfSection(input.binder, section);
  return new Set([...only, ...inSection.filter((name) => known.has(name))]);
}
