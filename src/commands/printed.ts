import type {Workspace} from '../io/workspace.ts';
import {leavesInBinder} from '../model/leaves-in-binder.ts';
import {ledgerPath} from '../model/read-binder-files.ts';
import {PdfSyntaxError} from '../print/pdf-syntax.ts';
import {readPrintedLeaves} from '../print/printed-leaves.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import {UsageError} from '../support/usage-error.ts';
import {requireSheets, sheetsOfSection} from './choose-sheets.ts';
import type {Outcome, Surroundings} from './command.ts';
import {binderPdf, changedPdf, onlyPdf} from './last-built.ts';
import {type BuiltFile, type LedgerEntries, ledgerEntries, sheetsIn} from './ledger-entries.ts';
import {appendToLedger, readLedger} from './ledger-file.ts';
import {openBinder, openFolder} from './open-binder.ts';

export interface PrintedWishes {
  /** Names of sheets, such as `S-07`. Without any, and without a section, all that was built last is meant. */
  readonly sheets: readonly string[];
  readonly section: string | null;
  /** Whether leaves that are marked as a draft are recorded as well. */
  readonly drafts: boolean;
}

/** Where printed leaves come from, the last built first: every build removes the parts that an earlier one made. */
const sources = [onlyPdf, changedPdf, binderPdf];

/**
 * Adds to the ledger the leaves of the PDF that was built last, and those that they leave no place for. What is in
 * that file is what was printed, whatever was written since. Named sheets are taken from the last file that has them.
 * Throws `UsageError` when nothing was built, and when there are only drafts.
 */
export async function runPrinted(
  folder: string,
  around: Surroundings,
  wishes: PrintedWishes,
): Promise<Outcome> {
  const {workspace} = await openFolder(folder, around);
  const before = await workspace.readBytes(ledgerPath);
  const text = Buffer.from(before ?? []).toString('utf8');
  const ledger = readLedger(text);
  const outcome: Outcome = {findings: ledger.findings, textOf: () => text, written: [], isBroken: false};
  if (ledger.entries === null)
    return {...outcome, text: 'Nothing was recorded: the ledger must be mended first.\n'};

  const inBinder = leavesInBinder(ledger.entries);
  const chosen = await chooseFiles(await builtFiles(workspace), folder, around, wishes);
  const records = chosen.map(({file, sheets}) =>
    ledgerEntries(file, inBinder, {sheets, drafts: wishes.drafts, on: around.today}),
  );
  const added = records.flatMap(({entries}) => entries);
  const from = englishList(chosen.map(({file}) => file.path));
  const warning = draftsInWords(records);
  if (added.length === 0 && records.some(({drafts}) => drafts.length > 0))
    throw new UsageError(`nothing was recorded from ${from}: ${warning}`);
  if (added.length === 0)
    return {...outcome, text: `Nothing to record: the ledger has every leaf of ${from} as it is.\n`};
  const whole = appendToLedger(before, added);
  if (whole === null) {
    const fault = `\`${ledgerPath}\` does not end with its list of leaves`;
    throw new UsageError(`nothing was recorded: ${fault}; move what stands after the list above \`leaves:\``);
  }
  await workspace.write(ledgerPath, whole);
  const printed = added.filter(({done}) => done === 'printed').length;
  const counts = [
    ...(printed > 0 ? [`${plural(printed, 'leaf', 'leaves')} printed`] : []),
    ...(printed < added.length ? [`${plural(added.length - printed, 'leaf', 'leaves')} taken out`] : []),
  ];
  return {
    ...outcome,
    written: [ledgerPath],
    text: `Recorded from ${from}: ${englishList(counts)}.\n${warning === '' ? '' : `Not recorded: ${warning}.\n`}`,
  };
}

async function builtFiles(workspace: Workspace): Promise<readonly BuiltFile[]> {
  const files: BuiltFile[] = [];
  for (const path of sources) {
    const bytes = await workspace.readBytes(path);
    if (bytes === null) continue;
    try {
      files.push({path, ...readPrintedLeaves(bytes)});
    } catch (error) {
      if (!(error instanceof PdfSyntaxError)) throw error;
      throw new UsageError(`\`${path}\` is not as \`build\` made it (${error.message}); build again`, {
        cause: error,
      });
    }
  }
  if (files.length > 0) return files;
  throw new UsageError(
    'nothing was built yet: run `swatchleaf build`, print what it made, then run `swatchleaf printed`',
  );
}

/** What to record from which file; `sheets` is null for all of them. */
async function chooseFiles(
  files: readonly BuiltFile[],
  folder: string,
  around: Surroundings,
  {sheets, section}: PrintedWishes,
): Promise<readonly {readonly file: BuiltFile; readonly sheets: ReadonlySet<string> | null}[]> {
  if (sheets.length === 0 && section === null) return files.slice(0, 1).map((file) => ({file, sheets: null}));
  const known = new Set(files.flatMap(sheetsIn));
  requireSheets(sheets, known, 'what was built last');
  const waiting = new Set(sheets);
  if (section !== null) {
    const {binder} = await openBinder(folder, around);
    if (binder === null)
      throw new UsageError('the syllabus cannot be read, so its sections are not known; `check` says why');
    for (const sheet of sheetsOfSection(binder, section)) if (known.has(sheet)) waiting.add(sheet);
  }
  const chosen = files.flatMap((file) => {
    const found = new Set(sheetsIn(file).filter((sheet) => waiting.delete(sheet)));
    return found.size === 0 ? [] : [{file, sheets: found}];
  });
  if (chosen.length === 0) throw new UsageError('what was built last has no leaf of that section');
  return chosen;
}

/** What was passed over as a draft; empty when nothing was. */
function draftsInWords(records: readonly LedgerEntries[]): string {
  const sheets = records.flatMap(({drafts}) => drafts);
  if (sheets.length === 0) return '';
  const which =
    sheets.length > 6 ? `the leaves of ${sheets.length} sheets` : `the leaves of ${englishList(sheets)}`;
  return `${which} are marked as a draft; mend the errors and print them again, print what is finished with \`build --only\`, or record them as drafts with \`--drafts\``;
}
