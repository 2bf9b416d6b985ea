import {readFile, stat} from 'node:fs/promises';
import path from 'node:path';
import {errorCode, explainFailure} from '../io/explain-failure.ts';
import type {Workspace} from '../io/workspace.ts';
import {libraryPath} from '../model/read-binder-files.ts';
import {type Choice, chooseNew, type NewSource} from '../references/import/choose-new.ts';
import {importFormat} from '../references/import/csl-record.ts';
import {type DecodedText, decodeText} from '../references/import/decode-text.ts';
import {largestImport, readReferences} from '../references/import/read-references.ts';
import {plural} from '../support/plural.ts';
import {UsageError} from '../support/usage-error.ts';
import {visibleText} from '../support/visible-text.ts';
import type {Outcome, Surroundings} from './command.ts';
import {importFindings} from './import-findings.ts';
import {appendToLibrary, readLibraryFile} from './library-file.ts';
import {openFolder} from './open-binder.ts';

interface ImportWishes {
  readonly around: Surroundings;
  /** Whether nothing is written. */
  readonly isDryRun: boolean;
}

/**
 * Adds the references in `file`, which another program saved, to the end of the library; what the library has is left
 * out. What could not be read is a finding with its place. Throws `UsageError` when the file or the library cannot be used.
 */
export async function runImport(
  file: string,
  folder: string,
  {around, isDryRun}: ImportWishes,
): Promise<Outcome> {
  const {workspace} = await openFolder(folder, around);
  const {text, encoding} = await readForeign(file, around.currentFolder);
  const stamp = await workspace.stamp(libraryPath);
  const before = await workspace.readBytes(libraryPath);
  const libraryText = Buffer.from(before ?? []).toString('utf8');
  const library = readLibraryFile(libraryText);
  const outcome: Outcome = {
    findings: library.findings,
    textOf: (name) => (name === libraryPath ? libraryText : name === file ? text : null),
    written: [],
    isBroken: false,
  };
  if (library.sources === null)
    return {...outcome, text: 'Nothing was imported: the library must be mended first.\n'};

  const format = importFormat(file, text);
  if (!format.ok) return {...outcome, findings: importFindings(file, text, format.problems)};
  const {entries, problems} = await readReferences(text, format.value);
  const choice = chooseNew(entries, library.sources);
  const findings = importFindings(file, text, problems);
  const said = [
    ...(encoding === 'UTF-8' ? [] : [`${file} is not UTF-8; it was read as ${encoding}.`]),
    ...inWords(choice, isDryRun),
  ];
  const report = {
    ...outcome,
    findings,
    text: said.map((line) => `${visibleText(line, {oneLine: true})}\n`).join(''),
  };
  if (choice.added.length === 0) return report;
  const sources = choice.added.map(({source}) => source);
  const {whole, fault} = appendToLibrary(
    before,
    sources,
    `From ${visibleText(path.basename(file))}, imported ${around.today}`,
  );
  if (whole === null) throw new UsageError(`nothing was imported into \`${libraryPath}\`: ${fault}`);
  if (isDryRun) return report;
  await writeLibrary(workspace, whole, stamp?.stamp ?? null);
  return {...report, written: [libraryPath]};
}

/** Throws `UsageError` when there is no such file, and for one that is far too large; `OperationalError` for the disk. */
async function readForeign(file: string, currentFolder: string): Promise<DecodedText> {
  const absolute = path.resolve(currentFolder, file);
  const facts = await stat(absolute).catch((error: unknown) => {
    if (['ENOENT', 'ENOTDIR'].includes(errorCode(error) ?? '')) return null;
    throw explainFailure('read', file, error);
  });
  if (facts === null) throw new UsageError(`there is no file \`${file}\``);
  if (!facts.isFile()) throw new UsageError(`\`${file}\` is no file; name what the other program saved`);
  // A character takes four bytes at most.
  if (facts.size > 4 * largestImport)
    throw new UsageError(
      `\`${file}\` has ${Math.ceil(facts.size / 1e6)} MB, too much for references; save only those that you need, without abstracts and attached files`,
    );
  try {
    return decodeText(await readFile(absolute));
  } catch (error) {
    throw explainFailure('read', file, error);
  }
}

/** Throws `UsageError` when the library is another than the one that was read. */
async function writeLibrary(workspace: Workspace, whole: Uint8Array, stamp: string | null): Promise<void> {
  const now = (await workspace.stamp(libraryPath))?.stamp ?? null;
  const isWritten = now === stamp && (now === null ? await workspace.create(libraryPath, whole) : true);
  if (!isWritten)
    throw new UsageError(`nothing was imported: \`${libraryPath}\` was changed meanwhile; import again`);
  if (now !== null) await workspace.write(libraryPath, whole);
}

function inWords({added, leftOut}: Choice, isDryRun: boolean): readonly string[] {
  const [done, would] = isDryRun ? ['Would add', ' to be added'] : ['Added', ' added'];
  return [
    added.length === 0 ? `Nothing${would}.` : `${done} ${plural(added.length, 'source')}:`,
    ...added.flatMap(sourceInWords),
    ...(leftOut.length === 0 ? [] : [`Left out ${plural(leftOut.length, 'entry', 'entries')}:`]),
    ...leftOut.map(({name, reason}) => `  ${shortened(name)}: ${reason}`),
  ];
}

function sourceInWords({source, dropped, changed}: NewSource): readonly string[] {
  const notes = [...(dropped.length > 0 ? [`without ${dropped.join(', ')}`] : []), ...changed];
  return [`  ${source.id}${notes.length === 0 ? '' : `: ${notes.join('; ')}`}`];
}

function shortened(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}…` : name;
}
