import type {Finding} from '../diagnostics/finding.ts';
import type {Item} from '../model/binder.ts';
import type {SafeHtml} from '../model/composed.ts';
import {readingFinding} from '../model/reading-rules.ts';
import type {BodyLookups} from './compose-context.ts';
import {nodePlace} from './node-place.ts';
import {bodyComposer} from './processor.ts';
import {readFragment} from './sanitise-fragment.ts';
import {createSlots} from './slots.ts';

/** An item's text as HTML for its sheet: computed, cited, cross-referenced and sanitised. The item's tree stays as it is. */
export function composeBody(
  item: Pick<Item, 'id' | 'file' | 'body'>,
  lookups: BodyLookups,
): {readonly html: SafeHtml; readonly findings: readonly Finding[]} {
  const findings: Finding[] = [];
  const composer = bodyComposer({
    lookups,
    citations: lookups.citations.map(readFragment),
    slots: createSlots(),
    marksLines: lookups.marksLines ?? false,
    notes: lookups.notes ?? [],
    idPrefix: `${item.id}-`,
    report: (node, fault) => findings.push(readingFinding(item.file, {...fault, place: nodePlace(node)})),
  });
  const tree = composer.runSync(structuredClone(item.body.tree));
  // Sanitised and written out by the processor: this is what the brand stands for.
  return {html: composer.stringify(tree) as SafeHtml, findings};
}
