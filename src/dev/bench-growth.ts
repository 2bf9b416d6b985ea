import {spawnSync} from 'node:child_process';
import {cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs';
import {tmpdir} from 'node:os';
import path from 'node:path';

const sizes = [25, 100, 400, 1600];

/** `check` as a process over binders of copies of one swatch: time for each item, start-up taken off, against that at 100 items. */
export function benchGrowth(root: string, program: string): readonly string[] {
  const startUp = timeOf([program, '--version']);
  const perItem = sizes.map((size) => {
    const folder = mkdtempSync(path.join(tmpdir(), 'swatchleaf-bench-'));
    try {
      writeBinder(root, folder, size);
      return (timeOf([program, 'check', folder]) - startUp) / size;
    } finally {
      rmSync(folder, {recursive: true, force: true});
    }
  });
  const [, base = Number.NaN] = perItem;
  return sizes.map(
    (size, index) =>
      `check, ${String(size).padStart(5)} items    ${(perItem[index] ?? Number.NaN).toFixed(1).padStart(6)} ms an item = ${((perItem[index] ?? Number.NaN) / base).toFixed(2)} × that at 100`,
  );
}

function timeOf(args: readonly string[]): number {
  const start = performance.now();
  spawnSync(process.execPath, args, {stdio: 'ignore'});
  return performance.now() - start;
}

function writeBinder(root: string, folder: string, size: number): void {
  const from = (file: string) => path.join(root, 'content', file);
  const to = (file: string) => path.join(folder, 'content', file);
  mkdirSync(to('swatches'), {recursive: true});
  cpSync(from('library.yaml'), to('library.yaml'));
  cpSync(from('binder.yaml'), to('binder.yaml'));
  const swatch = readFileSync(from('swatches/s-07-double-decreases.md'), 'utf8').replace(
    /^photos:\n(?: .*\n)+/m,
    '',
  );
  const letters = 'ABCDEFGHIJKLMNOP';
  const ids = Array.from(
    {length: size},
    (_, index) => `${letters[Math.floor(index / 100)]}-${String(index % 100).padStart(2, '0')}`,
  );
  for (const id of ids)
    writeFileSync(to(`swatches/${id}.md`), swatch.replace(/^requirement: .*/m, `requirement: ${id}`));
  const requirements = ids.map((id) => `      - {id: ${id}, kind: swatch, title: Swatch ${id}}`).join('\n');
  writeFileSync(
    to('syllabus.yaml'),
    `title: Many\nsections:\n  - title: Swatches\n    requirements:\n${requirements}\n`,
  );
}
