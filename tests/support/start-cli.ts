import {spawn} from 'node:child_process';
import process from 'node:process';
import {onTestFinished} from 'vitest';
import {program, type Ran, type RunOptions, root, testEnvironment} from './run-cli.ts';

/** A run of the program that is still going on. */
export interface StartedRun {
  readonly processId: number;
  /** What it has said on standard error until now. */
  said(): string;
  /** Comes when standard error holds what is waited for, or when the run has ended. */
  until(said: RegExp): Promise<void>;
  /** To the run and to whatever it started in its own group of processes. */
  signal(name: NodeJS.Signals): void;
  /** The exit code is -1 for a run that was killed. */
  readonly ended: Promise<Ran>;
}

/** Starts the compiled program as the leader of its own group of processes, which is gone when the test is. */
export function startSwatchleaf(
  args: readonly string[],
  {cwd = root, env = {}}: Omit<RunOptions, 'interrupt'> = {},
): StartedRun {
  const child = spawn(process.execPath, [program, ...args], {
    cwd,
    env: testEnvironment(env),
    detached: true,
  });
  const processId = child.pid ?? 0;
  let [out, err, isOver] = ['', '', false];
  child.stdout.on('data', (part) => {
    out += part;
  });
  child.stderr.on('data', (part) => {
    err += part;
  });
  const ended = new Promise<Ran>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      isOver = true;
      resolve({code: code ?? -1, out, err});
    });
  });
  const signal = (name: NodeJS.Signals) => {
    if (!isOver && processId > 0) process.kill(-processId, name);
  };
  onTestFinished(() => signal('SIGKILL'));
  return {
    processId,
    said: () => err,
    until: (said) =>
      new Promise((resolve) => {
        const look = () => {
          if (said.test(err)) resolve();
        };
        child.stderr.on('data', look);
        child.on('close', () => resolve());
        look();
      }),
    signal,
    ended,
  };
}
