import type {Finding} from '../diagnostics/finding.ts';
import type {Binder} from '../model/binder.ts';
import {readingFinding} from '../model/reading-rules.ts';
import {lookUpTable} from '../tables/index.ts';

/** What stands in the way of the computed tables that the items ask for, at the directives that ask. */
export function tableFindings(binder: Binder): readonly Finding[] {
  return binder.items.flatMap((item) => {
    const table = lookUpTable(binder, item);
    return item.body.directives.flatMap(({name, attributes, place}) =>
      (table(name, attributes)?.problems ?? []).map((problem) =>
        readingFinding(item.file, {rule: 'computed-table', place, ...problem}),
      ),
    );
  });
}
