import {lstat, mkdir} from 'node:fs/promises';
import path from 'node:path';
import {openDiskWorkspace} from '../io/disk-workspace.ts';
import {explainFailure} from '../io/explain-failure.ts';
import {settingsPath, syllabusPath} from '../model/read-binder-files.ts';
import {plural} from '../support/plural.ts';
import {UsageError} from '../support/usage-error.ts';
import {type Asked, askForSettings, type StarterSettings} from './ask-for-settings.ts';
import {type Outcome, type Surroundings, saying} from './command.ts';
import {howToRun} from './how-to-run.ts';
import {exampleFiles, starterFiles} from './starter-files.ts';

export interface InitWishes extends Asked {
  /** Whether the worked example is to be copied instead of the starter. */
  readonly example: boolean;
}

/**
 * Lays down a new binder in `folder`, which is made when it is not there. What exists is never touched. The binder file
 * comes last, so that a run that was cut short can be started again. Throws `UsageError` where there is a binder.
 */
export async function runInit(folder: string, around: Surroundings, wishes: InitWishes): Promise<Outcome> {
  const target = path.resolve(around.currentFolder, folder);
  await refuseWhatIsThere(folder, target);
  const settings = wishes.example ? refuseSettings(wishes) : await askForSettings(wishes, around);
  const files = settings === null ? await exampleFiles() : await starterFiles(settings, around.today);
  await mkdir(target, {recursive: true}).catch((error: unknown) => {
    throw explainFailure('make', folder, error);
  });
  const workspace = await openDiskWorkspace(target);
  const [made, left]: [string[], string[]] = [[], []];
  for (const [file, content] of inOrder(files)) {
    ((await workspace.create(file, content)) ? made : left).push(file);
  }
  return saying(report(folder, around, {made, left, settings}));
}

function inOrder(files: ReadonlyMap<string, string | Uint8Array>) {
  return [...files].sort(([a], [b]) => Number(a === settingsPath) - Number(b === settingsPath));
}

async function refuseWhatIsThere(folder: string, target: string): Promise<void> {
  const facts = await lstat(target).catch(() => null);
  if (facts?.isFile()) throw new UsageError(`\`${folder}\` is a file; name a folder`);
  for (const file of [settingsPath, path.basename(settingsPath)]) {
    const isThere = await lstat(path.join(target, file)).catch(() => null);
    if (!isThere) continue;
    throw new UsageError(
      `\`${folder}\` is a binder already: it has \`${file}\`. Nothing was changed; name another folder for a new binder`,
    );
  }
}

/** The worked example brings its own name and paper. */
function refuseSettings({example: _, ...asked}: InitWishes): null {
  const given = Object.entries(asked).flatMap(([name, value]) => (value === null ? [] : [name]));
  if (given[0] === undefined) return null;
  throw new UsageError(
    `the worked example has a \`${given[0]}\` of its own: leave \`--${given[0]}\` out, and change it in \`${settingsPath}\` afterwards`,
  );
}

interface Laid {
  readonly made: readonly string[];
  readonly left: readonly string[];
  readonly settings: StarterSettings | null;
}

function report(folder: string, around: Surroundings, {made, left, settings}: Laid): string {
  const run = howToRun(around);
  const named = folder === '.' ? '' : ` ${/^[\w./\\~-]+$/.test(folder) ? folder : JSON.stringify(folder)}`;
  const inFolder = (file: string) => (folder === '.' ? file : path.join(folder, file));
  const steps = [
    ...(settings === null
      ? []
      : [
          [
            inFolder(settingsPath),
            `${settings.name === null ? 'your name, ' : ''}the certificate, the paper`,
          ],
          [inFolder(syllabusPath), 'what must be sent in, and under which limits'],
        ]),
    [`${run} check${named}`, 'says what is still to do'],
    [`${run} build${named}`, `prints the binder into ${inFolder('build')}`],
  ] as const;
  const width = Math.max(...steps.map(([step]) => step.length));
  return [
    ...(settings === null
      ? [`The worked example, ${plural(made.length, 'file')}, lies in ${inFolder('content')}.`]
      : ['Made:', ...made.map((file) => `  ${inFolder(file)}`)]),
    ...(left.length > 0
      ? ['Left as it was, because it was there already:', ...left.map((file) => `  ${inFolder(file)}`)]
      : []),
    '',
    'Next:',
    ...steps.map(([step, what]) => `  ${step.padEnd(width)}  ${what}`),
    '',
  ].join('\n');
}
