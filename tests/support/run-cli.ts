import {spawn} from 'node:child_process';
import {cp, mkdir, mkdtemp, readdir, rm, writeFile} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import path from 'node:path';
import sharp from 'sharp';
import {onTestFinished} from 'vitest';

export const root = path.resolve(import.meta.dirname, '../..');
export const program = path.join(root, '.compiled/program/swatchleaf.js');

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** Sends the signal once standard error holds what is waited for. */
  readonly interrupt?: {readonly signal: NodeJS.Signals; readonly when: RegExp};
}

/** A settled date, no colours, and `env`. */
export function testEnvironment(env: Readonly<Record<string, string>>): NodeJS.ProcessEnv {
  return {...process.env, SOURCE_DATE_EPOCH: '1790553600', NO_COLOR: '1', ...env};
}

/** Runs the compiled program as a user does; `npm run check` compiles it before the tests. */
export function swatchleaf(
  args: readonly string[],
  {cwd = root, env = {}, interrupt}: RunOptions = {},
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [program, ...args], {cwd, env: testEnvironment(env)});
    let [out, err] = ['', ''];
    child.stdout.on('data', (part) => {
      out += part;
    });
    child.stderr.on('data', (part) => {
      err += part;
      if (interrupt?.when.test(err)) child.kill(interrupt.signal);
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({code: code ?? -1, out, err}));
  });
}

/** The small valid binder of the rules' cases in a folder of its own, gone after the test. `files` are laid over it; null takes one away. */
export async function smallBinder(
  files: Readonly<Record<string, string | Uint8Array | null>> = {},
): Promise<string> {
  const folder = await emptyFolder();
  await cp(path.join(root, 'tests/rules/base/content'), path.join(folder, 'content'), {recursive: true});
  await mkdir(path.join(folder, 'content/photos'));
  await writeFile(path.join(folder, 'content/photos/s-01-front.jpg'), await picture(1200));
  for (const [file, content] of Object.entries(files)) {
    const target = path.join(folder, file);
    await mkdir(path.dirname(target), {recursive: true});
    if (content === null) await rm(target, {recursive: true});
    else await writeFile(target, content);
  }
  return folder;
}

/** A plain square picture as JPEG, `side` pixels wide. */
export function picture(side: number): Promise<Buffer> {
  return sharp({create: {width: side, height: side, channels: 3, background: '#b8a88a'}})
    .jpeg()
    .toBuffer();
}

/** An empty folder with a blank and a hash in its name, gone after the test. */
export async function emptyFolder(): Promise<string> {
  const folder = await mkdtemp(path.join(tmpdir(), 'swatchleaf test #'));
  onTestFinished(() => rm(folder, {recursive: true, force: true}));
  return folder;
}

export async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, {recursive: true, withFileTypes: true});
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join('/'))
    .sort();
}
