// A test runner for Stryker. It loads the tests once and then runs, for each mutant, only the test functions that reach
// it, the quickest first, until one fails. A Vitest started anew for each mutant costs seconds; this costs the tests
// alone. It is sound as long as a test leaves nothing behind: the test that killed a mutant is run once more without the
// mutant and must pass, or else the process ends and Stryker tries the mutant in a fresh one.
//
// MUTANT_TESTS names the folders of `tests` to run; without it, those that prove the arithmetic and the sources.

import {readdirSync} from 'node:fs';
import {resolve} from 'node:path';
import {runInThisContext} from 'node:vm';
import {getFn, startTests} from '@vitest/runner';
import {createServer} from 'vite';

const folders = (process.env.MUTANT_TESTS ?? 'knitting references published tables').split(' ');

/** They need minutes, compare times or count their runs: a busy machine must not kill a mutant. */
const leftOut =
  /rows\/(rows\.property|fuzz|broken-steps)|import\/hostile|citation-engine\.property|share-sort-macros|published\/(commonmark|identifiers)/;

/** It can pass only once in a process, and only before anything else has loaded the citation processor. */
const once = 'the processor is loaded with the first engine, not before';
const order = (file) => (file.endsWith('/citation-engine.test.ts') ? 0 : 1);

/** How long one test may take with a mutant in it, in ms: long enough for a busy machine. */
const patience = (test) => Math.round(15_000 + 10 * (test.result.duration ?? 0));

// Where the mutated code looks up which mutant is on, and counts.
globalThis.__stryker__ ??= {};

class OneProcessRunner {
  #state = globalThis.__stryker__;
  #server;
  #tests = new Map();
  #runs = 0;
  #soiled = false;

  capabilities() {
    return {reloadEnvironment: true};
  }

  async init() {
    this.#server = await serverOfModules();
    const specs = testFiles().map((filepath) => ({filepath, testLocations: undefined}));
    const files = await startTests(specs, this.#vitestRunner());
    for (const {filepath, result} of files) {
      const [error] = result?.errors ?? [];
      if (error) throw new Error(`${filepath}: ${error.stack ?? error.message}`);
    }
    for (const test of files.flatMap(testsIn)) {
      if (test.mode === 'run' && test.name !== once) this.#tests.set(test.id, test);
    }
  }

  async dryRun() {
    const {mutantCoverage} = this.#state;
    for (const id of Object.keys(mutantCoverage?.perTest ?? {})) {
      if (!this.#tests.has(id)) delete mutantCoverage.perTest[id];
    }
    return {status: 'complete', tests: [...this.#tests.values()].map(testResult), mutantCoverage};
  }

  async mutantRun({activeMutant, testFilter, hitLimit}) {
    if (this.#soiled) process.exit(1);
    const tests = (testFilter ?? [...this.#tests.keys()])
      .map((id) => this.#tests.get(id))
      .toSorted((a, b) => (a.result.duration ?? 0) - (b.result.duration ?? 0));
    const result = await this.#judge(activeMutant.id, tests, hitLimit);
    this.#runs += 1;
    return result;
  }

  async dispose() {
    await this.#server?.close();
  }

  async #judge(mutant, tests, hitLimit) {
    const state = this.#state;
    for (const [index, test] of tests.entries()) {
      Object.assign(state, {activeMutant: mutant, hitCount: 0, hitLimit});
      const error = await failure(test);
      const tooOften = state.hitCount > hitLimit;
      Object.assign(state, {activeMutant: undefined, hitCount: undefined});
      if (tooOften || error?.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT')
        return {status: 'timeout', reason: test.name};
      if (error === undefined) continue;
      if ((await failure(test)) !== undefined) {
        if (this.#runs > 0) process.exit(1);
        this.#soiled = true;
      }
      const failureMessage = String(error.message ?? error);
      return {status: 'killed', killedBy: [test.id], failureMessage, nrOfTests: index + 1};
    }
    return {status: 'survived', nrOfTests: tests.length};
  }

  #vitestRunner() {
    const state = this.#state;
    return {
      config: {
        root: process.cwd(),
        name: '',
        setupFiles: [],
        testTimeout: 120_000,
        hookTimeout: 120_000,
        retry: 0,
        maxConcurrency: 1,
        tags: [],
        sequence: {hooks: 'stack', setupFiles: 'list', seed: 1, shuffle: false},
      },
      importFile: (file) => this.#server.ssrLoadModule(file),
      onBeforeTryTask: ({id}) => {
        state.currentTestId = id;
      },
      onAfterTryTask: () => {
        state.currentTestId = undefined;
      },
    };
  }
}

const serverOfModules = () =>
  createServer({
    configFile: false,
    appType: 'custom',
    logLevel: 'error',
    server: {middlewareMode: true, watch: null, hmr: false, ws: false},
    optimizeDeps: {noDiscovery: true},
    resolve: {
      alias: [
        {find: /^vitest$/, replacement: resolve('tests/mutants/vitest-stand-in.mjs')},
        {find: /^fast-check$/, replacement: resolve('tests/mutants/few-runs.mjs')},
      ],
    },
  });

const testFiles = () =>
  folders
    .flatMap((folder) =>
      readdirSync(`tests/${folder}`, {recursive: true}).map((file) => resolve('tests', folder, file)),
    )
    .filter((file) => file.endsWith('.test.ts') && !leftOut.test(file))
    .toSorted((a, b) => order(a) - order(b) || (a < b ? -1 : 1));

const testsIn = (task) => (task.type === 'test' ? [task] : task.tasks.flatMap(testsIn));

const testResult = ({id, fullName, file, result}) => ({
  id,
  name: fullName,
  fileName: file.filepath,
  timeSpentMs: result.duration ?? 0,
  ...(result.state === 'pass'
    ? {status: 0}
    : {status: 1, failureMessage: result.errors?.[0]?.stack ?? 'failed'}),
});

/** What the test fails with, if it fails. A loop without end is broken off, which only a script with a time limit can. */
const failure = async (test) => {
  try {
    globalThis.runTest = getFn(test);
    await runInThisContext('runTest()', {timeout: patience(test)});
  } catch (error) {
    return error ?? new Error('failed');
  }
};

const factory = () => new OneProcessRunner();
factory.inject = [];

export const strykerPlugins = [{kind: 'TestRunner', name: 'one-process', factory}];
