import type {Item} from '../model/binder.ts';
import {plural} from '../support/plural.ts';
import {type Result, success} from '../support/result.ts';
import {unreadable} from './attribute-readers.ts';

type Block = Item['body']['blocks'][number];

export interface ChartBlock {
  readonly language: 'rows' | 'chart';
  readonly text: string;
}

/** The `rows` or `chart` block that a drawing is made of: the first, or the one with that number among them. */
export function chartBlock(
  item: Item,
  number: number | null,
  languages: readonly ChartBlock['language'][],
): Result<ChartBlock> {
  const blocks = item.body.blocks.filter((each): each is Block & ChartBlock =>
    languages.some((known) => known === each.language),
  );
  const block = blocks[(number ?? 1) - 1];
  if (block) return success(block);
  const names = languages.map((language) => `\`${language}\``).join(' or ');
  return blocks.length === 0
    ? unreadable(
        `\`${item.id}\` has no ${names} block`,
        `Write one between two lines of \`~~~\`, the first with ${names} behind it.`,
      )
    : unreadable(
        `\`${item.id}\` has ${plural(blocks.length, `${names} block`, `${names} blocks`)}, there is no number \`${number ?? 1}\``,
        'Count the blocks from the top of the item, beginning with 1.',
      );
}
