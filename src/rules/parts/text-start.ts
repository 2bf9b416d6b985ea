import type {Place} from '../../diagnostics/finding.ts';
import type {Item} from '../../model/binder.ts';

/** Where the text below the front matter begins; the requirement's id when there is no text. */
export function textStart(item: Item): Place {
  const position = item.body.tree.children[0]?.position;
  if (!position) return item.places.value(['requirement']);
  const {line, column} = position.start;
  return {line, column, endLine: line, endColumn: column};
}
