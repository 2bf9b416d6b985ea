import {readFile, writeFile} from 'node:fs/promises';
import path from 'node:path';
import type {Surroundings} from '../commands/command.ts';
import {openBinder} from '../commands/open-binder.ts';
import {printDocument} from '../commands/print-documents.ts';
import {prepareReprint} from '../commands/reprint.ts';
import {renderReprint} from '../layout/render-reprint.ts';
import {withBrowser} from '../print/browser.ts';
import type {FoundBrowser} from '../print/find-browser.ts';
import {copyExample, writeGrownBinder} from './bench-binders.ts';
import {type Command, timeProcess} from './bench-timing.ts';

/** The worked example in a folder of its own, built once. */
export interface BuiltExample {
  readonly folder: string;
  readonly browser: FoundBrowser;
  /** Path of the binder's final HTML. */
  readonly html: string;
}

/** What every group of measurements is given. */
export interface BenchWorld {
  readonly root: string;
  /** Path of the compiled program. */
  readonly program: string;
  readonly runs: number;
  /** Made when first asked for. */
  readonly example: () => Promise<BuiltExample>;
  /** Folder of a binder of `size` items, made when first asked for. */
  readonly grown: (size: number) => string;
  /** A command of the program on a binder folder. */
  readonly command: (args: readonly string[], more?: Partial<Command>) => Command;
  readonly say: (line: string) => void;
}

/** The day on which everything is measured: some rules look at the date. */
export const epoch = '1790553600';

/** Everything that is made for measuring lies in `scratch`. */
export function makeWorld(
  world: Pick<BenchWorld, 'root' | 'program' | 'runs' | 'say'>,
  browser: FoundBrowser,
  scratch: string,
): BenchWorld {
  let example: Promise<BuiltExample> | undefined;
  const grown = new Map<number, string>();
  const command = (args: readonly string[], more: Partial<Command> = {}): Command => ({
    args: [world.program, ...args],
    cwd: world.root,
    env: {...process.env, SOURCE_DATE_EPOCH: epoch},
    ...more,
  });
  return {
    ...world,
    command,
    example() {
      example ??= (async () => {
        const folder = path.join(scratch, 'example');
        copyExample(world.root, folder);
        timeProcess(command(['build', folder]));
        return {folder, browser, html: path.join(folder, 'build/binder.html')};
      })();
      return example;
    },
    grown(size) {
      const known = grown.get(size);
      if (known !== undefined) return known;
      const folder = path.join(scratch, `grown-${size}`);
      writeGrownBinder(world.root, folder, size);
      grown.set(size, folder);
      return folder;
    },
  };
}

/** What the command line would tell a command that is called within this process. */
export function quietSurroundings(root: string): Surroundings {
  return {
    currentFolder: root,
    environment: process.env,
    today: new Date(Number(epoch) * 1000).toISOString().slice(0, 10),
    progress: () => {},
    version: '0.0.0',
    columns: 80,
    ask: null,
  };
}

/** Writes the final HTML of an item's reprint, made by the program's own functions; gives its path. */
export async function writeReprintHtml({folder, browser}: BuiltExample, id: string): Promise<string> {
  const opened = await openBinder(folder, quietSurroundings(folder));
  const {binder} = opened;
  if (binder === null) throw new Error('the worked example cannot be read');
  const {input} = await prepareReprint(opened, binder, [id]);
  const {html} = await withBrowser(browser, (running) =>
    printDocument(running, binder, id, (counts) => renderReprint(input, [id], counts)),
  );
  const file = path.join(folder, `${id}.html`);
  await writeFile(file, html);
  return file;
}

/** The versions that a figure depends on. */
export async function versionsIn(root: string, browser: FoundBrowser): Promise<Record<string, string>> {
  const versionOf = async (folder: string): Promise<string> =>
    JSON.parse(await readFile(path.join(root, folder, 'package.json'), 'utf8')).version;
  const packages = ['puppeteer-core', 'remark-parse', 'remark-gfm', 'remark-directive', 'citeproc'];
  const found = await Promise.all(
    packages.map(async (name) => [name, await versionOf(path.join('node_modules', name))] as const),
  );
  return {
    swatchleaf: await versionOf('.'),
    node: process.version,
    browser: await withBrowser(browser, async ({version}) => version),
    ...Object.fromEntries(found),
  };
}
