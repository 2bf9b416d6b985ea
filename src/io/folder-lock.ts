import {randomInt} from 'node:crypto';
import {realpath} from 'node:fs/promises';
import {basename, dirname, join} from 'node:path';
import {setTimeout as pause} from 'node:timers/promises';
import {OperationalError} from '../support/operational-error.ts';
import {sweepBelow} from './aside-file.ts';
import {errorCode, explainFailure} from './explain-failure.ts';
import {layClaim, type Withdrawal} from './lay-claim.ts';
import {type Claim, type ClaimPlace, claimPlaces, claimsIn, removeClaims} from './lock-claims.ts';
import {processStart} from './process-life.ts';

export interface LockWishes {
  /** What the lock is for, as others are told: the command's name. */
  readonly command: string;
  /** Told once, when the wait is long enough to be noticed. */
  readonly onWait: (holder: Claim) => void;
  /** Milliseconds after which it is given up. */
  readonly patience?: number;
}

export interface FolderLock {
  /** Whether a run that was killed had left its lock; what it had half written in the folder was removed. */
  readonly wasAbandoned: boolean;
  release(): void;
}

/** Milliseconds. */
const noticeable = 400;
const usualPatience = 10_000;

/**
 * Makes sure that no other run writes into the binder `folder`, which need not exist, until the lock is released or the
 * program ends by `process.exit`. Waits for one that does; throws `OperationalError` that names it when it takes longer.
 *
 * Each run lays down a claim of its own and then looks for others: of two at once at least the later one sees the other
 * and steps back. So a claim is never handed over and never read half written; one whose process is gone counts for
 * nothing. It guards against two windows of one computer, not against two computers that share a disk.
 */
export async function lockFolder(folder: string, wishes: LockWishes): Promise<FolderLock> {
  const places = claimPlaces(await realPathOf(folder));
  const start = (await processStart(process.pid)) ?? '0';
  const began = performance.now();
  let wasAbandoned = false;
  let isTold = false;
  for (;;) {
    const {holder, dead} = await look(places);
    wasAbandoned ||= dead.length > 0;
    await removeClaims(dead);
    const tried = holder ?? (await claim(places, wishes.command, start));
    if ('withdraw' in tried) {
      if (wasAbandoned) await sweepAll(places[0].folder);
      return {wasAbandoned, release: tried.withdraw};
    }
    const waited = performance.now() - began;
    if (waited > (wishes.patience ?? usualPatience)) throw new OperationalError(refusal(tried, wishes));
    if (waited > noticeable && !isTold) wishes.onWait(tried);
    isTold ||= waited > noticeable;
    // Two that step back from each other must not do so in step.
    await pause(randomInt(20, 80));
  }
}

/** Where the locks lie that runs in the binder `folder` left when they were killed. The next run that writes removes them. */
export async function abandonedLocks(folder: string): Promise<readonly string[]> {
  const {dead} = await look(claimPlaces(await realPathOf(folder)));
  return dead.map(({path}) => path);
}

/** Since when a claim has stood, in local time, to the minute. */
export function sinceWhen({since}: Claim): string {
  const date = new Date(since);
  const two = (value: number) => String(value).padStart(2, '0');
  const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${day} ${two(date.getHours())}:${two(date.getMinutes())}`;
}

function refusal(holder: Claim, {command}: LockWishes): string {
  const {command: other, processId, start, path} = holder;
  const isSure = start !== '0';
  const what = `\`${other}\` has been at work in this binder since ${sinceWhen(holder)} (process ${processId}, ${
    isSure ? 'still running' : 'which seems to be running'
  })`;
  const remedy = `wait until it has ended or end it in its window, then run \`${command}\` again`;
  return `${what}; ${remedy}${isSure ? '' : `; if no Swatchleaf is running, delete \`${path}\``}`;
}

/** Of the claims of other runs the oldest that holds, and those of killed runs. */
async function look(
  places: readonly ClaimPlace[],
): Promise<{readonly holder: Claim | null; readonly dead: readonly Claim[]}> {
  const found = await Promise.all(places.map(claimsIn));
  const live = found.flatMap((each) => each.live).filter(({processId}) => processId !== process.pid);
  const [holder = null] = live.sort((a, b) => a.since - b.since);
  return {holder, dead: found.flatMap((each) => each.dead)};
}

/** What takes the claim away again, or the claim of another run, from which this one has stepped back. */
async function claim(
  places: readonly [ClaimPlace, ClaimPlace],
  command: string,
  start: string,
): Promise<Withdrawal | Claim> {
  const own = await layClaim(places, command, start);
  const {holder} = await look(places);
  if (holder === null) return own;
  own.withdraw();
  return holder;
}

async function sweepAll(build: string): Promise<void> {
  for (const folder of [join(dirname(build), 'content'), build]) await sweepBelow(folder, Date.now());
}

/** Of a folder that is not there yet, the real path of the nearest one that is, and the rest. */
async function realPathOf(folder: string): Promise<string> {
  try {
    return await realpath(folder);
  } catch (error) {
    if (errorCode(error) !== 'ENOENT' || dirname(folder) === folder)
      throw explainFailure('open', folder, error);
    return join(await realPathOf(dirname(folder)), basename(folder));
  }
}
