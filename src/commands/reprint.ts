import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {renderReprint} from '../layout/render-reprint.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import {withBrowser} from '../print/browser.ts';
import {englishList} from '../support/english-list.ts';
import {nearestName} from '../support/nearest-name.ts';
import {UsageError} from '../support/usage-error.ts';
import {findBrowserFor, type PrintWishes} from './build.ts';
import type {Outcome, Surroundings} from './command.ts';
import {openBinder} from './open-binder.ts';
import {prepareLayout} from './prepare-layout.ts';
import {printDocument} from './print-documents.ts';

/**
 * Prints each item of `ids` with its cover page and tag into `build/reprint`, one file an item. Without ids, all items
 * that wait to be sent again. Throws `UsageError` for an id that no item has, and when nothing waits.
 */
export async function runReprint(
  folder: string,
  ids: readonly string[],
  around: Surroundings,
  wishes: PrintWishes,
): Promise<Outcome> {
  const opened = await openBinder(folder, around);
  const {binder, textOf} = opened;
  if (binder === null) return {findings: opened.findings, textOf, written: [], isBroken: true};
  const chosen = chooseItems(binder, ids);
  const files = new Set(chosen.map((id) => itemsById(binder).get(id)?.file));
  const whole = await prepareLayout(opened, binder);
  // A fault elsewhere in the binder does not make these leaves drafts.
  const findings = whole.findings.filter(({file}) => files.has(file));
  const errors = findings.filter(({severity}) => severity === 'error').length;
  const input: LayoutInput = {...whole, findings, draft: errors > 0 ? {errors} : null};
  return withBrowser(findBrowserFor(opened, binder, wishes), async (browser) => {
    const written: string[] = [];
    const all = [...findings];
    for (const id of chosen) {
      const document = await printDocument(browser, binder, `Resubmission of ${id}`, (counts) =>
        renderReprint(input, [id], counts),
      );
      const path = `build/reprint/${id}.pdf`;
      await opened.workspace.write(path, document.pdf);
      written.push(path);
      all.push(...document.findings);
    }
    return {findings: sortFindings(all), textOf, written, isBroken: false};
  });
}

function chooseItems(binder: Binder, ids: readonly string[]): readonly string[] {
  const items = itemsById(binder);
  if (ids.length === 0) {
    const waiting = [...items.values()].filter(({fields}) => fields.status === 'rework').map(({id}) => id);
    if (waiting.length === 0)
      throw new UsageError('no item waits to be sent again; name the items to print, such as `reprint S-07`');
    return waiting;
  }
  const unknown = ids.filter((id) => !items.has(id));
  if (unknown.length > 0) {
    const near = unknown.length === 1 ? nearestName(unknown[0] ?? '', items.keys()) : null;
    throw new UsageError(
      `no item answers ${englishList(unknown.map((id) => `\`${id}\``))}${near ? `; did you mean \`${near}\`?` : ''}`,
    );
  }
  return ids;
}
