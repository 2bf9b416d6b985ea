import type {Root} from 'hast';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import {linkKind} from '../link-kind.ts';

/** Of the links in HTML that is not ours, those to the web stay. The sanitiser would keep links to files beside the page. */
export const rehypeWebLinks: Plugin<[], Root> = () => (tree) => {
  visit(tree, 'element', ({properties}) => {
    if (typeof properties.href === 'string' && linkKind(properties.href) !== 'outside')
      delete properties.href;
  });
};
