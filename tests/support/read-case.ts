import {existsSync, readdirSync, readFileSync} from 'node:fs';
import {join, relative} from 'node:path';
import {parse} from 'yaml';
import type {Finding} from '../../src/diagnostics/finding.ts';
import {sortFindings} from '../../src/diagnostics/sort-findings.ts';
import {createMemoryWorkspace} from '../../src/io/memory-workspace.ts';
import type {Binder, PhotoFacts} from '../../src/model/binder.ts';
import {assemble, check, load} from '../../src/pipeline.ts';

export interface CheckedCase {
  /** Null when there is none for want of settings or a syllabus. */
  readonly binder: Binder | null;
  readonly findings: readonly Finding[];
  /** What each file holds, as it was given to the workspace. */
  readonly textOf: (file: string) => string | null;
}

/** How the texts of a case are changed before they are read. */
export type Rewrite = (text: string) => string;

/** Today in every case, unless a case's `today.txt` says otherwise. */
const usualToday = '2026-09-28';

/**
 * Reads and checks a binder that is laid out in `folders`, files of later folders over those of earlier ones. Photos do
 * not lie there: `photos.yaml` beside `content` says by name what a decoder would find.
 */
export async function checkCase(
  folders: readonly string[],
  rewrite: Rewrite = (text) => text,
): Promise<CheckedCase> {
  const texts: Record<string, string> = {};
  for (const folder of folders) {
    for (const path of filesBelow(join(folder, 'content'))) {
      texts[`content/${path}`] = rewrite(readFileSync(join(folder, 'content', path), 'utf8'));
    }
  }
  const facts = photoFacts(folders);
  const names = [...facts.keys()];
  // The stand-in for a picture is its number; the stand-in for the decoder looks its facts up.
  const pictures = names.map((name, index) => [`content/photos/${name}`, Uint8Array.of(index)] as const);
  const workspace = createMemoryWorkspace({...texts, ...Object.fromEntries(pictures)});
  const loaded = await load(workspace, async ([index = -1]) => {
    const found = facts.get(names[index] ?? '');
    if (!found) throw new Error('a case has more photos than a byte can number');
    return found;
  });
  const {binder, findings} = assemble(loaded, today(folders));
  return {
    binder,
    findings: binder ? check(binder) : sortFindings(findings),
    textOf: (file) => texts[file] ?? null,
  };
}

function photoFacts(folders: readonly string[]): ReadonlyMap<string, PhotoFacts> {
  const last = folders.map((folder) => join(folder, 'photos.yaml')).findLast(existsSync);
  const written: Readonly<
    Record<string, {width: number; height: number} | {reason: 'empty' | 'unreadable'}>
  > = last === undefined ? {} : (parse(readFileSync(last, 'utf8')) ?? {});
  return new Map(
    Object.entries(written).map(([name, facts]): [string, PhotoFacts] => [
      name,
      'reason' in facts ? {ok: false, ...facts} : {ok: true, format: 'jpeg', ...facts},
    ]),
  );
}

function today(folders: readonly string[]): string {
  const last = folders.map((folder) => join(folder, 'today.txt')).findLast(existsSync);
  return last === undefined ? usualToday : readFileSync(last, 'utf8').trim();
}

function filesBelow(folder: string): readonly string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, {recursive: true, withFileTypes: true})
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
}
