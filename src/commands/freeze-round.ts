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
 * Keeps a posting for good: its texts and PDFs byte for byte, a list of checksums as `sha256sum` writes and checks it,
 * and, last of all, `sent.yaml`, which makes it a round. What a killed run left is written over; a round that is there
 * is never touched. Gives the paths written.
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
  copies.set('checksums.txt', lines.join(''));
  for (const [path, content] of copies) await workspace.write(folder + path, content);

  const list = [...items].map(([id, file]) => `  ${id}: ${JSON.stringify(within(file))}\n`);
  const summary = `# Round ${round}, as it was posted. Written by \`swatchleaf send\`; nothing here is changed again.\n# \`sha256sum -c checksums.txt\` shows that the files are those that were sent.\n\nround: ${round}\nsent: ${sent}\nitems:\n${list.join('')}`;
  const path = `${folder}sent.yaml`;
  if (!(await workspace.create(path, summary)))
    throw new OperationalError(`\`${path}\` is there already: round ${round} was sent`);
  return [...copies.keys()].map((each) => folder + each).concat(path);
}

/** The path within the content folder, which is also that within the round's. */
function within(file: string): string {
  return file.replace(/^content\//, '');
}

function checksum(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
