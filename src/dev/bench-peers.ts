import {execFileSync} from 'node:child_process';
import {copyFileSync, existsSync, rmSync, statSync} from 'node:fs';
import path from 'node:path';
import {bareTexts} from './bench-floor-remark.ts';
import {median} from './bench-median.ts';
import {isHere, type Peer, type PeerPlaces} from './bench-peer.ts';
import {converters, printers} from './bench-peer-list.ts';
import {markdownTable} from './bench-table.ts';
import {inTurn, timeProcess} from './bench-timing.ts';
import type {BenchWorld} from './bench-world.ts';

/** A peer that takes longer is not waited for. */
const patience = 180_000;
const most = 3;

/**
 * The example's HTML through other printers, and its Markdown through other converters, as processes. None of them belongs
 * to the project: what is not on the PATH or in the folder given is left out, with a word on how to get it.
 */
export async function describePeers(world: BenchWorld, peersFrom: string | null): Promise<string> {
  const {folder, html, browser} = await world.example();
  const places: PeerPlaces = {from: peersFrom, browser};
  const scratch = path.join(path.dirname(folder), 'peers');
  const work = {root: world.root, html, pdf: `${scratch}.pdf`, folder: path.dirname(folder), browser};
  const printed = await measureAll(
    world,
    printers,
    places,
    (peer) => peer.command({...work, places}),
    work.pdf,
  );
  const markdown = bareTexts(path.join(folder, 'content'));
  const converted = await measureAll(
    world,
    converters(path.join(folder, 'content')),
    places,
    (peer) => peer.command({...work, places}),
    null,
  );
  const build = world.command(['build', folder]);
  const check = world.command(['check', folder]);
  const {own} = await inTurn(Math.min(world.runs, most), {own: () => timeProcess(build)});
  const {checked} = await inTurn(Math.min(world.runs, most), {checked: () => timeProcess(check)});
  const ours = [
    [
      '`swatchleaf build`, all seven documents, checked',
      seconds(own),
      ...factsOf(path.join(folder, 'build/binder.pdf')),
    ],
  ];
  return [
    `The example’s binder HTML (${megabytes(html)}) through other printers; medians of ${Math.min(world.runs, most)} processes each:`,
    markdownTable(
      ['printer', 'time', 'pages', 'tagged', 'fonts embedded', 'size'],
      [...ours, ...printed.rows],
    ).trimEnd(),
    `The example’s ${markdown.length} Markdown files to HTML; \`check\` reads them with every place kept, and proves and checks what they say:`,
    markdownTable(
      ['converter', 'time'],
      [['`swatchleaf check`', seconds(checked)], ...converted.rows],
    ).trimEnd(),
    ...[...printed.absent, ...converted.absent],
  ].join('\n\n');
}

async function measureAll(
  {runs, say}: BenchWorld,
  peers: readonly Peer[],
  places: PeerPlaces,
  commandOf: (peer: Peer) => ReturnType<Peer['command']>,
  pdf: string | null,
): Promise<{readonly rows: readonly (readonly string[])[]; readonly absent: readonly string[]}> {
  const rows: (readonly string[])[] = [];
  const absent: string[] = [];
  for (const peer of peers) {
    if (!isHere(peer, places)) {
      absent.push(`Left out: ${peer.name}, which is not here (${peer.install}).`);
      continue;
    }
    say(`${peer.name} …`);
    const command = commandOf(peer);
    const label = [peer.name, versionOf(peer, places)].filter((part) => part !== '').join(' ');
    try {
      const times: number[] = [];
      for (let run = 0; run < Math.min(runs, most); run++) {
        if (pdf !== null) rmSync(pdf, {force: true});
        times.push(timeProcess({patience, ...command}));
        const made = peer.makes?.(command);
        if (made !== undefined && pdf !== null && existsSync(made)) copyFileSync(made, pdf);
      }
      if (pdf !== null && !existsSync(pdf)) throw new Error('it made no PDF');
      rows.push([label, seconds(times), ...(pdf === null ? [] : factsOf(pdf))]);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : null;
      const fault = error instanceof Error ? error.message.split('\n')[0] : String(error);
      rows.push([
        label,
        code === 'ETIMEDOUT' ? `not within ${patience / 1000} s` : `failed: ${fault?.slice(-80)}`,
      ]);
    }
  }
  return {rows, absent};
}

function versionOf(peer: Peer, places: PeerPlaces): string {
  try {
    return peer.version(places);
  } catch {
    return '';
  }
}

/** Pages, tagged, embedded fonts and size of a PDF, read by poppler's tools; empty where these are not here. */
function factsOf(pdf: string): readonly string[] {
  const size = megabytes(pdf);
  try {
    const info = execFileSync('pdfinfo', [pdf], {encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore']});
    const about = (name: string) => new RegExp(`^${name}:\\s+(.*)$`, 'm').exec(info)?.[1] ?? '';
    const fonts = execFileSync('pdffonts', [pdf], {encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore']});
    return [about('Pages'), about('Tagged'), embeddedFonts(fonts), size];
  } catch {
    return ['', '', '', size];
  }
}

/** `12 of 12` from the table of `pdffonts`, whose last columns are: emb sub uni object ID. */
export function embeddedFonts(table: string): string {
  const fonts = table
    .split('\n')
    .slice(2)
    .map((line) => /\s(yes|no)\s+(?:yes|no)\s+(?:yes|no)\s+\d+\s+\d+\s*$/.exec(line)?.[1])
    .filter((embedded) => embedded !== undefined);
  return `${fonts.filter((embedded) => embedded === 'yes').length} of ${fonts.length}`;
}

function seconds(times: readonly number[]): string {
  return `${(median(times) / 1000).toFixed(2)} s`;
}

function megabytes(file: string): string {
  return `${(statSync(file).size / 1e6).toFixed(1)} MB`;
}
