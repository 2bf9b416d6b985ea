import {createHash} from 'node:crypto';
import {lstat, readdir, unlink} from 'node:fs/promises';
import {tmpdir} from 'node:os';
import {join} from 'node:path';
import {processStart} from './process-life.ts';

/**
 * A run's claim on a folder: an empty file that says everything in its name, so that nobody ever reads half of it. It
 * holds the command, the process and when that began; never a user or a computer.
 */
export interface Claim {
  readonly path: string;
  readonly command: string;
  readonly processId: number;
  /** As `processStart` tells it. */
  readonly start: string;
  /** When it was made, in milliseconds since 1970. */
  readonly since: number;
}

/** A folder in which claims may lie, and what their names begin with there. */
export interface ClaimPlace {
  readonly folder: string;
  readonly prefix: string;
}

/** The places for claims on the binder folder `root`, which is a real path: its build folder, and where that cannot be written. */
export function claimPlaces(root: string): readonly [build: ClaimPlace, temporary: ClaimPlace] {
  // Another user's claims are none of ours: the temporary folder belongs to all.
  const key = createHash('sha256')
    .update(`${process.getuid?.() ?? ''} ${root}`)
    .digest('hex')
    .slice(0, 16);
  return [
    {folder: join(root, 'build'), prefix: '.swatchleaf-'},
    {folder: tmpdir(), prefix: `swatchleaf-lock-${key}-`},
  ];
}

export function claimName({prefix}: ClaimPlace, command: string, start: string): string {
  return `${prefix}${command}-${process.pid}-${start}.lock`;
}

/** The claims that lie there: of runs that are at work, and of runs that were killed. Never throws. */
export async function claimsIn(
  place: ClaimPlace,
): Promise<{readonly live: readonly Claim[]; readonly dead: readonly Claim[]}> {
  const names = await readdir(place.folder).catch(() => []);
  const [live, dead]: [Claim[], Claim[]] = [[], []];
  for (const name of names) {
    const claim = await readClaim(place, name);
    if (claim !== null) ((await isAtWork(claim)) ? live : dead).push(claim);
  }
  return {live, dead};
}

/** Takes a claim away. Never throws: one that stays is that of an ended run, and counts for nothing. */
export async function removeClaims(claims: readonly Claim[]): Promise<void> {
  for (const {path} of claims) await unlink(path).catch(() => {});
}

async function readClaim({folder, prefix}: ClaimPlace, name: string): Promise<Claim | null> {
  if (!name.startsWith(prefix)) return null;
  const said = /^([a-z]+(?:-[a-z]+)*)-(\d+)-(\d+)\.lock$/.exec(name.slice(prefix.length));
  if (said === null) return null;
  const [, command = '', processId, start = ''] = said;
  const path = join(folder, name);
  const facts = await lstat(path).catch(() => null);
  // A folder or a link of that name was not made by us.
  if (!facts?.isFile()) return null;
  return {path, command, processId: Number(processId), start, since: facts.mtimeMs};
}

/** The number of a process that has ended may be given to another, which then began later. */
async function isAtWork({processId, start}: Claim): Promise<boolean> {
  const now = await processStart(processId);
  return now !== null && (now === start || now === '0' || start === '0');
}
