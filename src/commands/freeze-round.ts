import {createHash} from 'node:crypto';
import type {Workspace} from '../io/workspace.ts';
import {roundsFolder} from '../model/read-binder-files.ts';
import {OperationalError} from '../support/operational-error.ts';

export interface RoundToFreeze {
  readonly round: number;
  /** Year-month-day. */
  readonly sent: string;
  /** The file of each item by id, in the order of the syllabus. */
  readonly items: ReadonlyMap<string, string>;
  /** Files of the content folder that went into it. */
  readonly texts: readonly string[];
  /** By path in the build folder. */
  readonly pdfs: ReadonlyMap<string, string | Uint8Array>;
}

/**
 * Keeps a posting for good: a list of checksums as `sha256sum` writes and checks it, the texts and PDFs byte for byte,
 * and, last of all, `sent.yaml`, which makes it a round. What a killed run left is written over, and removed where it is
 * not sent now; a round that is there is never touched. Gives the paths written.
 */
export async function freezeRound(workspace: Workspace, frozen: RoundToFreeze): Promise<readonly string[]> {
  const {round, sent, items, texts, pdfs} = frozen;
  const folder = `${roundsFolder}${round}/`;
  const copies = new Map<string, string | Uint8Array>();
  for (const text of new Set(texts)) {
    const bytes = await workspace.readBytes(text);
    if (bytes !== null) copies.set(within(text), bytes);
  }
  for (const [path, pdf] of pdfs) copies.set(`pdf/${path.slice(path.lastIndexOf('/') + 1)}`, pdf);
  const lines = [...copies].map(([path, content]) => `${checksum(content)}  ${path}\n`);
  const path = `${folder}sent.yaml`;
  if ((await workspace.stamp(path)) !== null) throw wasSent(path, round);
  await removeUnsent(workspace, folder, copies);
  // The list comes first: by it the next run knows what a killed one had begun to keep.
  const kept = new Map<string, string | Uint8Array>([[checksumFile, lines.join('')], ...copies]);
  for (const [each, content] of kept) await workspace.write(folder + each, content);

  const list = [...items].map(([id, file]) => `  ${id}: ${JSON.stringify(within(file))}\n`);
  const summary = `# Round ${round}, as it was posted. Written by \`swatchleaf send\`; nothing here is changed again.\n# \`sha256sum -c checksums.txt\` shows that the files are those that were sent.\n\nround: ${round}\nsent: ${sent}\nitems:\n${list.join('')}`;
  if (!(await workspace.create(path, summary))) throw wasSent(path, round);
  return [...kept.keys()].map((each) => folder + each).concat(path);
}

/** Takes away what a killed run had begun to keep and is not sent now. What its list does not name as it is stays. */
async function removeUnsent(
  workspace: Workspace,
  folder: string,
  sent: ReadonlyMap<string, unknown>,
): Promise<void> {
  const list = (await workspace.readText(folder + checksumFile)) ?? '';
  const sums = new Map(
    Array.from(list.matchAll(/^([0-9a-f]{64}) {2}(.+)$/gm), ([, sum, path]) => [path, sum]),
  );
  for (const file of await workspace.list(folder.replace(/\/$/, ''))) {
    const path = file.slice(folder.length);
    const sum = sent.has(path) ? undefined : sums.get(path);
    const bytes = sum === undefined ? null : await workspace.readBytes(file);
    if (bytes !== null && checksum(bytes) === sum) await workspace.remove(file);
  }
}

function wasSent(path: string, round: number): OperationalError {
  return new OperationalError(`\`${path}\` is there already: round ${round} was sent`);
}

const checksumFile = 'checksums.txt';

/** The path within the content folder, which is also that within the round's. */
function within(file: string): string {
  return file.replace(/^content\//, '');
}

function checksum(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
