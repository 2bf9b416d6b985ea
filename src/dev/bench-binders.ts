import {cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** Lends `use` a new folder and removes it, whatever happens. */
export async function inFolder<T>(use: (folder: string) => T | Promise<T>): Promise<T> {
  const folder = mkdtempSync(path.join(tmpdir(), 'swatchleaf-bench-'));
  try {
    return await use(folder);
  } finally {
    rmSync(folder, {recursive: true, force: true, maxRetries: 5});
  }
}

/** The worked example in a folder of its own, so that a measurement neither waits for a build in the clone nor changes it. */
export function copyExample(root: string, folder: string): void {
  cpSync(path.join(root, 'content'), path.join(folder, 'content'), {recursive: true});
}

/**
 * A binder of `size` items: the worked example's swatches over and over, each time with ids and references of their own,
 * without their photos. The library and the binder file are the example's.
 */
export function writeGrownBinder(root: string, folder: string, size: number): void {
  const from = (file: string) => path.join(root, 'content', file);
  const to = (file: string) => path.join(folder, 'content', file);
  mkdirSync(to('swatches'), {recursive: true});
  for (const file of ['library.yaml', 'binder.yaml']) cpSync(from(file), to(file));
  const swatches = readdirSync(from('swatches'))
    .filter((file) => file.endsWith('.md'))
    .sort()
    .map((file) => asFirstSent(readFileSync(path.join(from('swatches'), file), 'utf8')));
  const requirements: string[] = [];
  for (let index = 0; index < size; index++) {
    const volume = Math.floor(index / swatches.length);
    const prefix = `${letters[Math.floor(volume / letters.length)]}${letters[volume % letters.length]}`;
    const text = (swatches[index % swatches.length] ?? '').replaceAll(/\bS-(\d\d)\b/g, `${prefix}-$1`);
    const id = /^requirement: (\S+)/m.exec(text)?.[1];
    writeFileSync(to(`swatches/${id}.md`), text);
    requirements.push(`      - {id: ${id}, kind: swatch, title: Swatch ${id}}\n`);
  }
  writeFileSync(
    to('syllabus.yaml'),
    `title: Many\nsections:\n  - title: Swatches\n    requirements:\n${requirements.join('')}`,
  );
}

/**
 * Without photos, of which there are the same few files however many items: growth would be that of copied pictures. And
 * without what answers the assessors, who have answered nothing here.
 */
function asFirstSent(text: string): string {
  return text
    .replaceAll(/^(?:photos|rework):\n(?: .*\n)+/gm, '')
    .replace(/^status: rework$/m, 'status: finished');
}
