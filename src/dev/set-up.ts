import {spawn} from 'node:child_process';
import {rm} from 'node:fs/promises';
import {createRequire} from 'node:module';
import {connect} from 'node:net';
import {homedir} from 'node:os';
import {dirname, join} from 'node:path';
import {thisMachine} from '../print/machine.ts';
import {OperationalError} from '../support/operational-error.ts';
import {provideBrowser, type SetUpWorld} from './provide-browser.ts';

/*
 * `npm run setup`: makes a clone ready to build and to test. Everything but a browser comes with `npm ci`; this looks
 * for one and fetches it if there is none. It is the only part of the project that reaches the network.
 */

const store = 'storage.googleapis.com';
const connectPatience = 10_000;
const proxies = ['HTTPS_PROXY', 'https_proxy', 'npm_config_https_proxy', 'npm_config_proxy'];

const world: SetUpWorld = {
  machine: thisMachine(),
  isAdministrator: process.getuid?.() === 0,
  run: (program, parameters) => run(program, parameters, program.endsWith('apt-get')),
  // Through a proxy the store need not be reachable itself.
  canDownload: async () => proxies.some((name) => process.env[name]) || (await answers(store, 443)),
  async download() {
    const {resolve} = createRequire(import.meta.url);
    const command = join(
      dirname(resolve('puppeteer/package.json')),
      'lib',
      'cjs',
      'puppeteer',
      'node',
      'cli.js',
    );
    return (
      (await run(process.execPath, [command, 'browsers', 'install', 'chrome-headless-shell'], true)) === 0
    );
  },
  async discardDownload() {
    const cache = process.env.PUPPETEER_CACHE_DIR || join(homedir(), '.cache', 'puppeteer');
    await rm(join(cache, 'chrome-headless-shell'), {recursive: true, force: true});
  },
  say: (line) => process.stderr.write(`${line}\n`),
};

/** Whatever the program prints is progress, so it goes to standard error. */
function run(program: string, parameters: readonly string[], isShown: boolean): Promise<number | null> {
  return new Promise((resolve) => {
    const child = spawn(program, parameters, {
      stdio: ['ignore', isShown ? 2 : 'ignore', isShown ? 2 : 'ignore'],
      env: {...process.env, DEBIAN_FRONTEND: 'noninteractive'},
    });
    child.once('error', () => resolve(null));
    child.once('exit', (code) => resolve(code));
  });
}

function answers(host: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({host, port, timeout: connectPatience});
    const tell = (answer: boolean) => {
      socket.destroy();
      resolve(answer);
    };
    socket.once('connect', () => tell(true));
    socket.once('timeout', () => tell(false));
    socket.once('error', () => tell(false));
  });
}

try {
  await provideBrowser(world);
} catch (error) {
  if (!(error instanceof OperationalError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 3;
}
