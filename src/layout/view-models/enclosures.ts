import {type Kind, kinds} from '../../model/kinds.ts';
import {plural} from '../../support/plural.ts';
import type {LayoutInput} from '../layout-input.ts';

const nouns: Readonly<Record<Kind, readonly [one: string, many: string]>> = {
  swatch: ['swatch', 'swatches'],
  pattern: ['written pattern', 'written patterns'],
  project: ['project', 'projects'],
  question: ['answer to a question', 'answers to questions'],
  report: ['report', 'reports'],
  review: ['book review', 'book reviews'],
  letter: ['letter', 'letters'],
};

/** What the binder holds beside the letter itself, counted by kind: `18 swatches`, `2 projects`. */
export function enclosures({composed}: Pick<LayoutInput, 'composed'>): readonly string[] {
  const items = [...composed.values()].map(({item}) => item).filter(({requirement}) => requirement !== null);
  return kinds
    .filter((kind) => kind !== 'letter')
    .map((kind) => ({kind, count: items.filter((item) => item.kind === kind).length}))
    .filter(({count}) => count > 0)
    .map(({kind, count}) => plural(count, ...nouns[kind]));
}
