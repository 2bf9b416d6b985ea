#!/usr/bin/env node
// The command line: arguments become a command; only this file prints and sets the exit code.
import {readFileSync} from 'node:fs';
import process from 'node:process';
import {Command, CommanderError, Option} from 'commander';
import type {Outcome, Surroundings} from './commands/command.ts';
import {formatJson} from './diagnostics/format-json.ts';
import {formatText, type Palette, plainPalette} from './diagnostics/format-text.ts';
import {OperationalError} from './support/operational-error.ts';
import {UsageError} from './support/usage-error.ts';

type Format = 'text' | 'json' | 'sarif';

const exit = {fine: 0, findings: 1, usage: 2, machine: 3, bug: 4} as const;

let verbose = false;

process.exitCode = await main(process.argv);

async function main(argv: readonly string[]): Promise<number> {
  // On leaving, the browser ends with its pipe and its profile folder is removed; a file is whole or not there.
  process.once('SIGINT', () => process.exit(130));
  process.once('SIGTERM', () => process.exit(143));
  try {
    return await run(argv);
  } catch (error) {
    return await explainError(error);
  }
}

async function run(argv: readonly string[]): Promise<number> {
  let code: number = exit.fine;
  const program = new Command('swatchleaf')
    .description('Turns a folder of Markdown into the ring binder of a hand-knitting certificate submission.')
    .version(version(), '-V, --version')
    .option('--verbose', 'show what stood behind an error')
    .showHelpAfterError('(`swatchleaf help <command>` shows what a command takes)')
    .exitOverride()
    .configureOutput({writeErr: (text) => process.stderr.write(text)})
    .hook('preAction', (command) => {
      verbose = command.opts().verbose === true;
    });

  program
    .command('check')
    .description('check every item against the syllabus and print what was found')
    .argument('[folder]', 'the binder folder, with `content` in it', '.')
    .addOption(
      new Option('--format <format>', 'how findings are printed')
        .choices(['text', 'json', 'sarif'])
        .default('text'),
    )
    .addHelpText('after', examples('swatchleaf check', 'swatchleaf check my-binder --format json'))
    .action(async (folder: string, options: {format: Format}) => {
      const {runCheck} = await import('./commands/check.ts');
      const outcome = await runCheck(folder, surroundings());
      process.stdout.write(await formatFindings(outcome, options.format));
      code = codeOf(outcome);
    });

  program
    .command('build')
    .description('check, then print binder, tags, letter, packing list and check report into `build`')
    .argument('[folder]', 'the binder folder, with `content` in it', '.')
    .option('--browser <path>', 'the browser that prints')
    .addHelpText('after', examples('swatchleaf build', 'swatchleaf build my-binder'))
    .action(async (folder: string, options: {browser?: string}) => {
      const {runBuild} = await import('./commands/build.ts');
      const outcome = await runBuild(folder, surroundings(), options);
      code = report(outcome);
    });

  program
    .command('reprint')
    .description('print items as a resubmission: cover page, item and tag; without ids, all that wait')
    .argument('[ids...]', 'ids such as S-07, and the binder folder when it is not this one')
    .option('--browser <path>', 'the browser that prints')
    .addHelpText(
      'after',
      examples('swatchleaf reprint S-07', 'swatchleaf reprint', 'swatchleaf reprint S-07 Q-05 my-binder'),
    )
    .action(async (words: string[], options: {browser?: string}) => {
      const {runReprint} = await import('./commands/reprint.ts');
      const ids = words.filter((word) => /^[A-Za-z]{1,4}-[0-9]{1,3}$/.test(word));
      const [folder = '.', second] = words.filter((word) => !ids.includes(word));
      if (second !== undefined)
        throw new UsageError(`\`${folder}\` and \`${second}\` cannot both be the binder folder`);
      const outcome = await runReprint(
        folder,
        ids.map((id) => id.toUpperCase()),
        surroundings(),
        options,
      );
      code = report(outcome);
    });

  program
    .command('explain')
    .description('print the law behind a rule and what to do; without an id, list all rules')
    .argument('[rule]', 'a rule id as printed by `check`')
    .addHelpText('after', examples('swatchleaf explain word-limit', 'swatchleaf explain'))
    .action(async (rule: string | undefined) => {
      const {explainRule} = await import('./commands/explain.ts');
      process.stdout.write(explainRule(rule ?? null));
    });

  await program.parseAsync([...argv]);
  return code;
}

/** Files made go to standard output, findings to standard error: a script reads the one, a person the other. */
function report(outcome: Outcome): number {
  const notable = outcome.findings.filter((finding) => finding.severity !== 'info');
  if (notable.length > 0)
    process.stderr.write(formatText(notable, outcome.textOf, palette(process.stderr.isTTY)));
  for (const file of outcome.written) process.stdout.write(`${file}\n`);
  return codeOf(outcome);
}

async function formatFindings(outcome: Outcome, format: Format): Promise<string> {
  if (format === 'json') return formatJson(outcome.findings);
  if (format === 'text') return formatText(outcome.findings, outcome.textOf, palette(process.stdout.isTTY));
  const [{formatSarif}, {describeRules}] = await Promise.all([
    import('./diagnostics/format-sarif.ts'),
    import('./commands/explain.ts'),
  ]);
  return formatSarif(outcome.findings, describeRules(), version());
}

async function explainError(error: unknown): Promise<number> {
  if (error instanceof CommanderError) return error.exitCode === 0 ? exit.fine : exit.usage;
  if (error instanceof UsageError || error instanceof OperationalError) {
    process.stderr.write(`swatchleaf: ${error.message}\n`);
    if (verbose && error.cause !== undefined) process.stderr.write(`${describeCause(error.cause)}\n`);
    return error instanceof UsageError ? exit.usage : exit.machine;
  }
  process.stderr.write(
    `swatchleaf: this is a fault in the program, not in your files.\n${describeCause(error)}\n`,
  );
  return exit.bug;
}

function codeOf({findings, isBroken}: Outcome): number {
  if (isBroken) return exit.usage;
  return findings.some((finding) => finding.severity === 'error') ? exit.findings : exit.fine;
}

function surroundings(): Surroundings {
  return {
    currentFolder: process.cwd(),
    environment: process.env,
    today: today(),
    progress: (line) => process.stderr.write(`${line}\n`),
  };
}

/** `SOURCE_DATE_EPOCH` (reproducible-builds.org) stands in for the clock when it is set. */
function today(): string {
  const epoch = process.env.SOURCE_DATE_EPOCH;
  if (epoch !== undefined && /^\d+$/.test(epoch))
    return new Date(Number(epoch) * 1000).toISOString().slice(0, 10);
  const now = new Date();
  const part = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${part(now.getMonth() + 1)}-${part(now.getDate())}`;
}

/** Colour only for a terminal, and never where `NO_COLOR` (no-color.org) is set. */
function palette(isTerminal: boolean): Palette {
  const {NO_COLOR, FORCE_COLOR, TERM} = process.env;
  const isColoured = NO_COLOR ? false : FORCE_COLOR ? FORCE_COLOR !== '0' : isTerminal && TERM !== 'dumb';
  if (!isColoured) return plainPalette;
  const paint = (code: number) => (text: string) => text.replace(/.+/g, `\u001b[${code}m$&\u001b[0m`);
  const bySeverity = {error: paint(31), warning: paint(33), info: paint(36)};
  return {severity: (severity, text) => bySeverity[severity](text), strong: paint(1), quiet: paint(2)};
}

function describeCause(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

function examples(...lines: readonly string[]): string {
  return `\nExamples:\n${lines.map((line) => `  ${line}`).join('\n')}\n`;
}

function version(): string {
  const manifest: {version: string} = JSON.parse(
    readFileSync(new URL('../package.json', import.meta.url), 'utf8'),
  );
  return manifest.version;
}
