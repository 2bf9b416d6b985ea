import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import {waitingItems} from '../model/item-state.ts';
import {UsageError} from '../support/usage-error.ts';
import type {Outcome, Surroundings} from './command.ts';
import {itemDifferences} from './item-differences.ts';
import {removeOldReprints} from './last-built.ts';
import type {OpenedBinder} from './open-binder.ts';
import {type LentBrowser, openToPrint, type PrintWishes} from './open-to-print.ts';
import {prepareLayout} from './prepare-layout.ts';
import {printItems, printRound} from './print-round.ts';
import {requireKnown} from './require-known.ts';

/**
 * Prints each item of `ids` with its cover page and tag into `build/reprint`, one file an item. Without ids, all items
 * that wait to be sent again, with the letter, packing list and label of the round. Throws `UsageError` for an id that
 * no item has, and when nothing waits.
 */
export function runReprint(
  folder: string,
  ids: readonly string[],
  around: Surroundings,
  wishes: PrintWishes,
): Promise<Outcome> {
  return openToPrint(folder, around, wishes, (opened, lent) => reprint(opened, ids, lent, around));
}

async function reprint(
  opened: OpenedBinder,
  ids: readonly string[],
  {ready, allPrinted}: LentBrowser,
  {progress}: Surroundings,
): Promise<Outcome> {
  const {binder, textOf, workspace} = opened;
  if (binder === null) return {findings: opened.findings, textOf, written: [], isBroken: true};
  requireKnown(ids, itemsById(binder).keys(), 'no item answers');
  const chosen = ids.length === 0 ? waitingOrNone(binder) : ids;
  const {input, findings} = await prepareReprint(opened, binder, chosen);
  const print = ids.length === 0 ? printRound : printItems;
  const printed = await print(await ready, workspace, input, chosen, progress);
  allPrinted();
  for (const [path, pdf] of printed.files) await workspace.write(path, pdf);
  if (ids.length === 0) await removeOldReprints(workspace, printed.files.keys(), progress);
  return {
    findings: sortFindings([...findings, ...printed.findings]),
    textOf,
    written: [...printed.files.keys()],
    isBroken: false,
  };
}

/** What the pages of some items are made from, with what was found in these; a fault elsewhere does not make them drafts. */
export async function prepareReprint(
  opened: OpenedBinder,
  binder: Binder,
  ids: readonly string[],
): Promise<{readonly input: LayoutInput; readonly findings: readonly Finding[]}> {
  const [whole, differences] = await Promise.all([
    prepareLayout(opened, binder, {only: new Set(ids)}),
    itemDifferences(opened.workspace, binder, ids),
  ]);
  const files = new Set(ids.map((id) => itemsById(binder).get(id)?.file));
  const findings = whole.findings.filter(({file}) => files.has(file));
  const errors = findings.filter(({severity}) => severity === 'error').length;
  return {input: {...whole, differences, findings, draft: errors > 0 ? {errors} : null}, findings};
}

function waitingOrNone(binder: Binder): readonly string[] {
  const waiting = waitingItems(binder);
  if (waiting.length === 0)
    throw new UsageError('no item waits to be sent again; name the items to print, such as `reprint S-07`');
  return waiting;
}
