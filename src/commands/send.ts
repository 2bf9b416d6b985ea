import {sortFindings} from '../diagnostics/sort-findings.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import {waitingItems} from '../model/item-state.ts';
import {nextRound, unansweredRound} from '../model/next-round.ts';
import {libraryPath, settingsPath, syllabusPath} from '../model/read-binder-files.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import {UsageError} from '../support/usage-error.ts';
import type {Outcome, Surroundings} from './command.ts';
import {freezeRound} from './freeze-round.ts';
import type {OpenedBinder} from './open-binder.ts';
import {openToPrint, type PrintWishes} from './open-to-print.ts';
import {prepareLayout} from './prepare-layout.ts';
import {printBinder} from './print-binder.ts';
import {printRound} from './print-round.ts';
import {prepareReprint} from './reprint.ts';

export interface SendWishes extends PrintWishes {
  /** Whether the candidate says that the self-check was gone through. */
  readonly selfChecked: boolean;
}

/**
 * Prints what is posted now, and keeps exactly that, PDFs and texts, in `content/rounds/<n>`. Refuses while errors stand,
 * while the last posting has no answer, and until the self-check was gone through. `sent.yaml` is written last: a round
 * without it was not sent, and the next run does it anew.
 */
export function runSend(folder: string, around: Surroundings, wishes: SendWishes): Promise<Outcome> {
  return openToPrint(folder, around, wishes, (opened, {ready}) => send(opened, ready, around, wishes));
}

async function send(
  opened: OpenedBinder,
  ready: Promise<PrintBrowser>,
  around: Surroundings,
  wishes: SendWishes,
): Promise<Outcome> {
  const {binder, textOf, workspace} = opened;
  if (binder === null) return {findings: opened.findings, textOf, written: [], isBroken: true};
  const round = nextRound(binder);
  const ids = itemsToSend(binder, round);
  await confirmSelfCheck(around, wishes);

  const print = round === 0 ? printFirst : printAgain;
  const {files, findings} = await print(opened, binder, ids, ready, around.progress);
  if (findings.some(({severity}) => severity === 'error')) {
    const text = `Round ${round} was not sent: mend the errors first, then send again.\n`;
    return {findings, textOf, written: [], isBroken: false, text};
  }
  for (const [path, content] of files) await workspace.write(path, content);
  const itemFiles = new Map(
    [...itemsById(binder)].filter(([id]) => ids.includes(id)).map(([id, {file}]) => [id, file]),
  );
  const written = await freezeRound(workspace, {
    round,
    sent: around.today,
    items: itemFiles,
    texts: [...itemFiles.values(), settingsPath, syllabusPath, libraryPath],
    pdfs: new Map([...files].filter(([path]) => path.endsWith('.pdf') && !path.includes('check-report'))),
  });
  return {
    findings,
    textOf,
    written,
    isBroken: false,
    text: `Round ${round}, ${plural(ids.length, 'item')}: kept in content/rounds/${round}. Print the PDFs there, tick the packing list, and post the box.\n`,
  };
}

/** Throws `UsageError` when nothing can be sent now. */
function itemsToSend(binder: Binder, round: number): readonly string[] {
  const waiting = unansweredRound(binder);
  if (waiting !== null) {
    throw new UsageError(
      `round ${waiting.round} was sent on ${waiting.sent} and has no answer yet; when the letter comes, \`answer\` lays down a file for it`,
    );
  }
  const open = binder.assessments.flatMap(({file, results}) =>
    Object.values(results).some(({result}) => result === 'open') ? [`\`${file}\``] : [],
  );
  if (open.length > 0)
    throw new UsageError(
      `${englishList(open)} has results that are still open; write \`passed\` or \`rework\` for each`,
    );
  if (round === 0)
    return [...itemsById(binder).values()].filter(({requirement}) => requirement !== null).map(({id}) => id);
  const ids = waitingItems(binder);
  if (ids.length === 0) throw new UsageError('no item waits to be sent again');
  return ids;
}

async function confirmSelfCheck({ask}: Surroundings, {selfChecked}: SendWishes): Promise<void> {
  if (selfChecked) return;
  if (ask === null) {
    throw new UsageError(
      'go through `build/self-check.pdf` at the table first, then say so with `--self-checked`',
    );
  }
  const answer = await ask('Have you gone through build/self-check.pdf, piece by piece? [y/N] ');
  if (!/^\s*y(es)?\s*$/i.test(answer)) throw new UsageError('not sent; nothing was changed');
}

async function printFirst(
  opened: OpenedBinder,
  binder: Binder,
  _ids: readonly string[],
  ready: Promise<PrintBrowser>,
  progress: Surroundings['progress'],
) {
  const input = await prepareLayout(opened, binder);
  if (input.draft !== null) return {files: new Map<string, string | Uint8Array>(), findings: input.findings};
  return printBinder(await ready, opened, input, progress);
}

/** What was found in files that are no items: settings, syllabus, answers. */
function besideItems({findings}: OpenedBinder, binder: Binder) {
  const items = new Set(binder.items.map(({file}) => file));
  return findings.filter(({file}) => !items.has(file));
}

async function printAgain(
  opened: OpenedBinder,
  binder: Binder,
  ids: readonly string[],
  ready: Promise<PrintBrowser>,
  progress: Surroundings['progress'],
) {
  const {input, findings: ofItems} = await prepareReprint(opened, binder, ids);
  const findings = sortFindings([...ofItems, ...besideItems(opened, binder)]);
  if (findings.some(({severity}) => severity === 'error'))
    return {files: new Map<string, string | Uint8Array>(), findings};
  const printed = await printRound(await ready, opened.workspace, input, ids, progress);
  return {files: printed.files, findings: sortFindings([...findings, ...printed.findings])};
}
