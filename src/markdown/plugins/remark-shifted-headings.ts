import type {Heading, Root} from 'mdast';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';

/** The sheet has the only first-level heading: when the author writes one, all of theirs go down one level. */
export const remarkShiftedHeadings: Plugin<[], Root> = () => (tree) => {
  const headings: Heading[] = [];
  visit(tree, 'heading', (node) => {
    headings.push(node);
  });
  if (!headings.some(({depth}) => depth === 1)) return;
  for (const heading of headings) heading.depth = lower[heading.depth];
};

const lower = {1: 2, 2: 3, 3: 4, 4: 5, 5: 6, 6: 6} as const;
