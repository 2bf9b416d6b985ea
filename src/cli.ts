#!/usr/bin/env node
// The command line: arguments become a command; only this file prints and sets the exit code.
import process from 'node:process';
import {Command, CommanderError, Option} from 'commander';
import type {CommandWords, FindingsFormat, Outcome, Surroundings, Typed} from './commands/command.ts';
import {commandList} from './commands/command-list.ts';
import {readOwnManifest} from './commands/own-manifest.ts';
import {runCommand} from './commands/run-command.ts';
import {tuneCompiling} from './commands/tune-compiling.ts';
import {formatJson} from './diagnostics/format-json.ts';
import {formatText, type Palette, plainPalette} from './diagnostics/format-text.ts';
import {OperationalError} from './support/operational-error.ts';
import {UsageError} from './support/usage-error.ts';
import {visibleText} from './support/visible-text.ts';

const exit = {fine: 0, findings: 1, usage: 2, machine: 3, bug: 4} as const;

const firstEvening = `A first evening:
  swatchleaf init my-binder    lay down a small binder that works
  swatchleaf check my-binder   say what is still to do
  swatchleaf build my-binder   print it into my-binder/build
`;

let verbose = false;

process.exitCode = await main(process.argv);

async function main(argv: readonly string[]): Promise<number> {
  tuneCompiling(process.versions.v8);
  // On leaving, the browser ends with its pipe and its profile folder is removed; a file is whole or not there.
  process.once('SIGINT', () => process.exit(130));
  process.once('SIGTERM', () => process.exit(143));
  // The terminal's window was closed.
  process.once('SIGHUP', () => process.exit(129));
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
    .version(readOwnManifest().version, '-V, --version')
    .option('--verbose', 'show what stood behind an error')
    .addHelpText('after', `\n${firstEvening}`)
    .showHelpAfterError('(`swatchleaf help <command>` shows what a command takes)')
    .exitOverride()
    .configureOutput({writeErr: (text) => process.stderr.write(visibleText(text))})
    .hook('preAction', (command) => {
      verbose = command.opts().verbose === true;
    });
  for (const words of commandList) {
    offer(program, words, async (typed) => {
      code = await report(await runCommand(words, typed, surroundings()));
    });
  }
  await program.parseAsync([...argv]);
  return code;
}

function offer(program: Command, words: CommandWords, run: (typed: Typed) => Promise<void>): void {
  const command = program.command(words.name).description(words.summary);
  for (const {spelling, says} of words.arguments) command.argument(spelling, says);
  for (const {spelling, says, choices, default: standard} of words.options) {
    const option = new Option(spelling, says);
    if (choices !== undefined) option.choices([...choices]);
    if (standard !== undefined) option.default(standard);
    command.addOption(option);
  }
  const examples = words.examples.map((line) => `  ${line}`).join('\n');
  command.addHelpText('after', `\nExamples:\n${examples}\n`);
  // commander gives an option's key in camel case; ours are read by the name that was typed.
  command.action(async () => {
    const options = Object.fromEntries(
      command.options.map((option) => [option.name(), command.getOptionValue(option.attributeName())]),
    );
    await run({words: command.args, options});
  });
}

/** What was asked for goes to standard output, findings on the way to standard error: a script reads the one, a person the other. */
async function report(outcome: Outcome): Promise<number> {
  const {findings, textOf, format, text, written} = outcome;
  if (format !== undefined) process.stdout.write(await formatFindings(outcome, format));
  else {
    const notable = findings.filter((finding) => finding.severity !== 'info');
    if (notable.length > 0) process.stderr.write(formatText(notable, textOf, palette(process.stderr.isTTY)));
  }
  if (text !== undefined) process.stdout.write(visibleText(text));
  for (const file of written) process.stdout.write(`${visibleText(file, {oneLine: true})}\n`);
  return codeOf(outcome);
}

async function formatFindings({findings, textOf}: Outcome, format: FindingsFormat): Promise<string> {
  if (format === 'json') return formatJson(findings);
  if (format === 'text') return formatText(findings, textOf, palette(process.stdout.isTTY));
  const [{formatSarif}, {describeRules}] = await Promise.all([
    import('./diagnostics/format-sarif.ts'),
    import('./commands/explain.ts'),
  ]);
  return formatSarif(findings, describeRules(), readOwnManifest().version);
}

async function explainError(error: unknown): Promise<number> {
  if (error instanceof CommanderError) return error.exitCode === 0 ? exit.fine : exit.usage;
  if (error instanceof UsageError || error instanceof OperationalError) {
    process.stderr.write(`swatchleaf: ${visibleText(error.message)}\n`);
    if (verbose && error.cause !== undefined) process.stderr.write(`${describeCause(error.cause)}\n`);
    return error instanceof UsageError ? exit.usage : exit.machine;
  }
  process.stderr.write(
    `swatchleaf: this is a fault in the program, not in your files.\n${describeCause(error)}\n`,
  );
  return exit.bug;
}

function codeOf({findings, isBroken, isLacking}: Outcome): number {
  if (isBroken) return exit.usage;
  if (isLacking) return exit.machine;
  return findings.some((finding) => finding.severity === 'error') ? exit.findings : exit.fine;
}

function surroundings(): Surroundings {
  return {
    currentFolder: process.cwd(),
    environment: process.env,
    today: today(),
    progress: (line) => process.stderr.write(`${visibleText(line)}\n`),
    version: readOwnManifest().version,
    columns: process.stdout.columns ?? 80,
    ask: process.stdin.isTTY && process.stderr.isTTY ? ask : null,
  };
}

async function ask(question: string): Promise<string> {
  const {createInterface} = await import('node:readline/promises');
  // Questions go to standard error, so that what a command makes can be redirected.
  const terminal = createInterface({input: process.stdin, output: process.stderr});
  // Ctrl-C, Ctrl-D and a terminal that goes away end the program at a question, as Ctrl-C does anywhere else.
  const leave = () => {
    process.stderr.write('\n');
    process.exit(130);
  };
  terminal.once('close', leave);
  const answer = await terminal.question(question);
  terminal.off('close', leave);
  terminal.close();
  return answer;
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
  return visibleText(error instanceof Error ? (error.stack ?? error.message) : String(error));
}
