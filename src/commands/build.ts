import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {renderLeaves} from '../layout/render-leaves.ts';
import {requireSheets, type SheetWishes, sheetsOfSection} from './choose-sheets.ts';
import type {Outcome, Surroundings} from './command.ts';
import {removeOldParts} from './last-built.ts';
import type {OpenedBinder} from './open-binder.ts';
import {type LentBrowser, openToPrint, type PrintWishes} from './open-to-print.ts';
import {prepareLayout} from './prepare-layout.ts';
import {printBinder} from './print-binder.ts';
import {printChanged} from './print-changed.ts';
import {printDraft} from './print-draft.ts';
import {printOnly} from './print-only.ts';

export interface BuildWishes extends PrintWishes, SheetWishes {
  /** Whether the leaves that differ from the ledger are printed as well. */
  readonly changed: boolean;
  /** Whether nothing but a draft for the candidate's own desk is printed. */
  readonly draft: boolean;
}

/**
 * Checks and prints everything into `build`, or only some sheets. A file there is replaced only by a whole new one, and
 * only after all of them were printed; while an error stands, every leaf of the binder is marked as a draft. Parts that an
 * earlier build made are removed: they may no longer be what the binder says. A draft leaves all other files alone.
 */
export function runBuild(folder: string, around: Surroundings, wishes: BuildWishes): Promise<Outcome> {
  return openToPrint(folder, around, wishes, (opened, lent) => build(opened, lent, around, wishes));
}

async function build(
  opened: OpenedBinder,
  {ready, allPrinted}: LentBrowser,
  {progress}: Surroundings,
  wishes: BuildWishes,
): Promise<Outcome> {
  const {binder, textOf, workspace} = opened;
  if (binder === null) return {findings: opened.findings, textOf, written: [], isBroken: true};
  const input = await prepareLayout(opened, binder, {notes: wishes.draft});
  const names = chooseSheets(input, wishes);
  const browser = await ready;
  const print = async () => {
    if (wishes.draft) return {...(await printDraft(browser, input, names, progress)), text: ''};
    if (names !== null) return {...(await printOnly(browser, opened, input, names, progress)), text: ''};
    const whole = await printBinder(browser, opened, input, progress);
    if (!wishes.changed) return {...whole, text: ''};
    const changes = await printChanged(browser, whole, progress);
    return {
      files: new Map([...whole.files, ...changes.files]),
      findings: sortFindings([...whole.findings, ...changes.findings]),
      text: changes.text,
    };
  };
  const {files, findings, text} = await print();
  allPrinted();
  for (const [path, content] of files) await workspace.write(path, content);
  if (!wishes.draft) await removeOldParts(workspace, files.keys(), progress);
  return {findings, textOf, written: [...files.keys()], isBroken: false, text};
}

/** The names of the sheets to print; null for the whole binder. Throws `UsageError` for one that there is not. */
function chooseSheets(input: LayoutInput, {only, section}: SheetWishes): ReadonlySet<string> | null {
  if (only.length === 0 && section === null) return null;
  const known = new Set(renderLeaves(input, new Map(), null).sheets.map(({label}) => label));
  requireSheets(only, known, 'the binder');
  const inSection = section === null ? [] : sheetsOfSection(input.binder, section);
  return new Set([...only, ...inSection.filter((name) => known.has(name))]);
}
