import {itemDifference} from '../compose/item-difference.ts';
import type {Workspace} from '../io/workspace.ts';
import type {Binder} from '../model/binder.ts';
import {itemsById} from '../model/binder.ts';
import type {ItemDifference} from '../model/difference.ts';
import {parseFile} from '../pipeline.ts';

/** What changed in each of the items since it was last sent; those of which no copy was kept are left out. */
export async function itemDifferences(
  workspace: Workspace,
  binder: Binder,
  ids: readonly string[],
): Promise<ReadonlyMap<string, ItemDifference>> {
  const items = itemsById(binder);
  const differences = new Map<string, ItemDifference>();
  for (const id of ids) {
    const item = items.get(id);
    const posting = binder.sentRounds.findLast(({items: posted}) => posted[id] !== undefined);
    if (!item || !posting) continue;
    const path = `${posting.file.slice(0, posting.file.lastIndexOf('/'))}/${posting.items[id]}`;
    const text = await workspace.readText(path);
    if (text === null) continue;
    const [before, now] = [parseFile({path, text}), parseFile({path: item.file, text: item.text})];
    differences.set(id, itemDifference(before, now, posting.round));
  }
  return differences;
}
