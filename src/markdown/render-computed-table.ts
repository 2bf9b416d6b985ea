import type {SafeHtml} from '../model/composed.ts';
import type {ComputedTable} from '../model/computed-table.ts';
import {fragmentReader} from './processor.ts';

/** A computed table as HTML, for sheets that show it outside the author's text. */
export function renderComputedTable({content}: ComputedTable): SafeHtml {
  // Built by us from elements, with every text escaped on writing: nothing of the author's is markup in it.
  return fragmentReader.stringify({type: 'root', children: [...content]}) as SafeHtml;
}
