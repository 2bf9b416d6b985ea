import type {ElementContent, Root} from 'hast';
import type {SafeHtml} from '../model/composed.ts';
import {fragmentReader} from './processor.ts';

/** HTML of the citation engine with nothing left in it but type styles and links to the web. */
export function sanitiseFragment(html: string): SafeHtml {
  // Sanitised and written out by the processor: this is what the brand stands for.
  return fragmentReader.stringify(treeOf(html)) as SafeHtml;
}

/** The same as content for a slot. */
export function readFragment(html: string): readonly ElementContent[] {
  return treeOf(html).children.filter((node) => node.type !== 'doctype');
}

function treeOf(html: string): Root {
  return fragmentReader.runSync(fragmentReader.parse(html));
}
