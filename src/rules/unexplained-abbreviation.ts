import {usedAbbreviations} from '../knitting/rows/used-abbreviations.ts';
import type {Item} from '../model/binder.ts';
import {dialectOf} from '../model/dialect.ts';
import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {rowBlocks} from './parts/row-blocks.ts';

/**
 * A list of abbreviations explains every one that the rows use.
 *
 * Why: the reader of a pattern looks there first. A line `::key` in the place of the list is always whole, since it
 * follows from the rows; this law is for lists written by hand.
 *
 * Example: `ssk` in the rows, and under the heading `Abbreviations` a list without it.
 */
export const unexplainedAbbreviation: Rule = {
  id: 'unexplained-abbreviation',
  summary: 'a list of abbreviations explains every one that the rows use',
  severity: 'warning',
  check(binder, report) {
    const dialect = dialectOf(binder.settings);
    const blocks = rowBlocks(binder);
    for (const item of binder.items) {
      const heading = item.body.headings.find(({text}) => /\babbreviations?\b/i.test(text));
      if (!heading || item.body.directives.some(({name}) => name === 'key')) continue;
      const listed = wordsBelow(item, heading.place.line);
      const missing = new Set(
        blocks
          .filter((block) => block.item === item)
          .flatMap(({read}) => usedAbbreviations(read.pattern, dialect))
          .filter(({id, abbreviation}) => !isExplained([id, abbreviation], listed))
          .map(({abbreviation}) => abbreviation),
      );
      if (missing.size === 0) continue;
      report({
        file: item.file,
        place: heading.place,
        message: `the rows use ${englishList([...missing].map((each) => `\`${each}\``))}, which the list does not explain`,
        hint: `Add ${missing.size === 1 ? 'it' : plural(missing.size, 'line', 'lines')} to the list, or put a line \`::key\` in its place.`,
      });
    }
  },
};

/** The lines from the heading to the next, in lower case. */
function wordsBelow({text, body}: Item, line: number): string {
  const next = body.headings.find(({place}) => place.line > line)?.place.line;
  return text
    .split('\n')
    .slice(line, next === undefined ? undefined : next - 1)
    .join('\n')
    .toLowerCase();
}

/** `st(s)` is explained by `st` or `sts`. */
function isExplained(names: readonly string[], listed: string): boolean {
  return names
    .flatMap((name) => [name, name.replace(/\(.*?\)/g, ''), name.replace(/[()]/g, '')])
    .some((name) =>
      new RegExp(`(?<![\\p{L}\\d])${escaped(name.toLowerCase())}(?![\\p{L}\\d])`, 'u').test(listed),
    );
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
}
