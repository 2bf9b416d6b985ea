import {type FSWatcher, watch as watchFolder} from 'node:fs';
import path from 'node:path';
import {setTimeout as pause} from 'node:timers/promises';
import {countFindings, describeCounts} from '../diagnostics/count-findings.ts';
import {type Item, itemsById} from '../model/binder.ts';
import {readPhotoFacts} from '../photos/read-photo-facts.ts';
import {type PreviewServer, startPreviewServer} from '../preview/preview-server.ts';
import type {PreviewPage} from '../preview/preview-state.ts';
import {OperationalError} from '../support/operational-error.ts';
import {visibleText} from '../support/visible-text.ts';
import type {Outcome, Surroundings} from './command.ts';
import {type ItemPreview, type LiveBinder, openLiveBinder} from './live-binder.ts';
import {openLiveFolder} from './live-folder.ts';
import {openFolder} from './open-binder.ts';
import {previewFindings} from './preview-findings.ts';

/** Milliseconds in which the several events of one save arrive. */
const burst = 12;
/** Milliseconds after which the folder is looked at anyway: network disks and some editors' saves tell of nothing. */
const patience = 1500;

/**
 * Checks on each save and shows the item that was edited in the browser, until the program is ended. Prints nothing into the
 * binder folder. While an item cannot be shown, its last good page stays.
 */
export async function runWatch(folder: string, around: Surroundings, port: number): Promise<Outcome> {
  const opened = await openFolder(folder, around);
  const files = openLiveFolder(opened.workspace, (bytes) => readPhotoFacts(bytes, opened.photoCache));
  const live = openLiveBinder(opened, files, around.today);
  const preview = createPreview(live, around);
  const server = await startPreviewServer(preview, port);
  const bell = createBell();
  const watchers = ['content', 'layouts'].flatMap((name) => ring(path.join(opened.folder, name), bell.ring));
  preview.onChoice(bell.ring);
  around.progress(`Preview: ${server.address}`);
  around.progress('Each save is checked and shown; Ctrl-C ends.');
  try {
    for (;;) {
      try {
        await preview.update(server, bell);
      } catch (error) {
        // A folder that is being moved or a disk that is away: the work goes on when it is back.
        if (!(error instanceof OperationalError)) throw error;
        around.progress(error.message);
        await pause(patience);
      }
    }
  } finally {
    for (const watcher of watchers) watcher.close();
    await server.close();
  }
}

function createPreview(live: LiveBinder, {progress}: Surroundings) {
  const pages = new Map<string, {readonly item: Item; readonly preview: ItemPreview}>();
  let shown: string | null = null;
  let chosen: string | null = null;
  let said = '';
  let tellChoice = () => {};

  async function pageOf(item: Item | undefined, id: string): Promise<PreviewPage | null> {
    let trouble: string | null = null;
    if (item) {
      try {
        pages.set(id, {item, preview: await live.preview(item)});
      } catch (error) {
        // A layout or a picture in the middle of being saved; the next save mends it.
        trouble = visibleText(`not shown anew: ${error instanceof Error ? error.message : String(error)}`);
      }
    } else trouble = 'this item cannot be read now; this is the last good page';
    const last = pages.get(id);
    if (last === undefined) return null;
    const {head, body} = last.preview;
    return {id, head, body, trouble};
  }

  return {
    onChoice(tell: () => void) {
      tellChoice = tell;
    },
    choose(id: string) {
      chosen = id;
      tellChoice();
    },
    async document(id: string) {
      const item = itemsIn(live).get(id);
      if (item && pages.get(id)?.item !== item) await pageOf(item, id);
      return pages.get(id)?.preview.document() ?? null;
    },
    /** One turn: reads what changed, shows the item, then what was found; waits for the next change. */
    async update(server: PreviewServer, bell: Bell): Promise<void> {
      const heard = bell.heard();
      const {changed, isYoung} = await live.refresh();
      const items = itemsIn(live);
      const edited = [...items.values()].find(({file}) => changed.includes(file))?.id;
      const next = chosen ?? edited ?? shown ?? [...items.keys()][0] ?? null;
      if (changed.length > 0 || next !== shown || chosen !== null) {
        chosen = null;
        shown = next;
        const page = next === null ? null : await pageOf(items.get(next), next);
        // The page is on its way before the whole binder is checked.
        if (page !== null) await server.tell({kind: 'page', page});
        const findings = live.findings();
        const counts = describeCounts(countFindings(findings));
        await server.tell({
          kind: 'findings',
          findings: previewFindings(live.binder(), findings, next, counts),
        });
        if (counts !== said) progress(counts);
        said = counts;
      }
      await bell.wait(heard, isYoung ? burst * 5 : patience);
      await pause(burst);
    },
  };
}

function itemsIn(live: LiveBinder): ReadonlyMap<string, Item> {
  const binder = live.binder();
  return binder === null ? new Map<string, Item>() : itemsById(binder);
}

/** Rung by every event; whoever waits knows which rings it has already heard, so that none is lost meanwhile. */
interface Bell {
  ring(): void;
  heard(): number;
  wait(heard: number, atMost: number): Promise<void>;
}

function createBell(): Bell {
  let rings = 0;
  let wake = () => {};
  return {
    ring() {
      rings++;
      wake();
    },
    heard: () => rings,
    async wait(heard, atMost) {
      if (rings !== heard) return;
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, atMost);
        wake = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    },
  };
}

/** Events of a folder; none where the system cannot tell of them, and then patience must do. */
function ring(folder: string, tell: () => void): readonly FSWatcher[] {
  try {
    const watcher = watchFolder(folder, {recursive: true}, tell);
    watcher.on('error', () => watcher.close());
    return [watcher];
  } catch {
    return [];
  }
}
