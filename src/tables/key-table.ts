import {h} from 'hastscript';
import {rowsOf} from '../knitting/rows/known-rows.ts';
import type {Dialect} from '../knitting/rows/stitch.ts';
import {type UsedAbbreviation, usedAbbreviations} from '../knitting/rows/used-abbreviations.ts';
import type {Item} from '../model/binder.ts';
import {dialectOf} from '../model/dialect.ts';
import {success} from '../support/result.ts';
import {itemNamed, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional} from './attributes.ts';
import {computed} from './define-table.ts';

/** `::key`: exactly the abbreviations that the item's written rows use, each with its meaning. */
export const keyTable = arithmeticTable({
  id: 'key',
  summary: 'the abbreviations that the written rows of an item use, with their meaning',
  example: '::key{of=S-07}',
  attributes: {of: optional(itemNamed('of'))},
  compute({of}, binder, item) {
    const shown = of ?? item;
    const used = keyOf(shown, dialectOf(binder.settings));
    if (used.length === 0) {
      return unreadable(
        `\`${shown.id}\` has no written rows to explain`,
        'Write the rows between a line `~~~rows` and a line `~~~`; the key follows from them.',
      );
    }
    return success(
      computed(() =>
        h('figure', {className: ['computed', 'abbreviations']}, [
          h(
            'dl',
            used.map(({abbreviation, words}) => h('div', [h('dt', abbreviation), h('dd', words)])),
          ),
          h('figcaption', `Abbreviations of ${shown.id}, those that its rows use`),
        ]),
      ),
    );
  },
});

/** Where a stitch has two abbreviations, the key explains the one that the rows use. */
function asWritten(used: UsedAbbreviation, text: string): UsedAbbreviation {
  return text.toLowerCase().includes(used.id.toLowerCase()) ? {...used, abbreviation: used.id} : used;
}

/** The abbreviations of all the item's blocks, each once, in the order of the key. */
function keyOf({body}: Item, dialect: Dialect): readonly UsedAbbreviation[] {
  const used = body.blocks
    .filter(({language}) => language === 'rows')
    .flatMap((block) =>
      usedAbbreviations(rowsOf(block).pattern, dialect).map((each) => asWritten(each, block.text)),
    );
  const once = new Map(used.map((each) => [each.id, each]));
  return [...once.values()].sort((a, b) =>
    a.abbreviation.toLowerCase() < b.abbreviation.toLowerCase() ? -1 : 1,
  );
}
