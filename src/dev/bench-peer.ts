import {execFileSync} from 'node:child_process';
import {readFileSync} from 'node:fs';
import {createRequire} from 'node:module';
import path from 'node:path';
import type {FoundBrowser} from '../print/find-browser.ts';
import {thisMachine} from '../print/machine.ts';
import type {Command} from './bench-timing.ts';

export interface PeerPlaces {
  /** Folder with a `node_modules` of peers; null where none was given. */
  readonly from: string | null;
  readonly browser: FoundBrowser;
}

export interface PeerWork {
  readonly root: string;
  /** Path of the HTML to print. */
  readonly html: string;
  /** Path that the PDF is to have. */
  readonly pdf: string;
  /** A folder for whatever a peer leaves behind. */
  readonly folder: string;
  readonly browser: FoundBrowser;
  readonly places: PeerPlaces;
}

/** Another program that does a part of the work. */
export interface Peer {
  readonly name: string;
  /** A program on the PATH, a package of npm, or something that the program brings itself. */
  readonly kind: 'program' | 'package' | 'own';
  readonly install: string;
  readonly command: (work: PeerWork) => Command;
  readonly version: (places: PeerPlaces) => string;
  /** Where it puts its PDF, when it cannot be told. */
  readonly makes?: (command: Command) => string;
}

/** Whether a peer is here. Nothing is fetched. */
export function isHere({name, kind}: Pick<Peer, 'name' | 'kind'>, places: PeerPlaces): boolean {
  if (kind === 'own') return true;
  return (kind === 'program' ? findProgram(name) : findPackage(name, places)) !== null;
}

/** The path of a program on the PATH; null when it is not there. */
export function findProgram(name: string): string | null {
  const machine = thisMachine();
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return folders.map((folder) => path.join(folder, name)).find((each) => machine.isProgram(each)) ?? null;
}

/** Only in the folder that was given: a package that the program itself brings is no peer. */
function findPackage(name: string, {from}: PeerPlaces): string | null {
  if (from === null) return null;
  const manifest = path.join(path.resolve(from), 'node_modules', name, 'package.json');
  return thisMachine().namesIn(path.dirname(manifest)).includes('package.json') ? manifest : null;
}

/** The file that a package of the folder is imported by. */
export function entryOf(name: string, {from}: PeerPlaces): string {
  return createRequire(path.join(path.resolve(from ?? '.'), 'peers.js')).resolve(name);
}

/** The script that a package of the folder puts on the command line. */
export function binOf(name: string, script: string, places: PeerPlaces): string {
  const manifest = findPackage(name, places) ?? '';
  const {bin} = JSON.parse(readFileSync(manifest, 'utf8'));
  return path.join(path.dirname(manifest), typeof bin === 'string' ? bin : bin[script]);
}

export function packageVersion(name: string): Peer['version'] {
  return (places) => JSON.parse(readFileSync(findPackage(name, places) ?? '', 'utf8')).version;
}

/** The first number with a point that the program says about itself. */
export function programVersion(name: string): Peer['version'] {
  return () => {
    const said = execFileSync(name, ['--version'], {encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe']});
    return /\d+(?:\.\d+)+/.exec(said)?.[0] ?? '';
  };
}
