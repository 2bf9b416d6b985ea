import type {Link, LinkReference, PhrasingContent, Root} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import type {BodyLookups} from '../compose-context.ts';
import {linkKind} from '../link-kind.ts';

/**
 * `[](#S-07)` becomes number, title and leaf of what it points to, `[S-07](#S-07)` its leaf `S-07 · 1`; with words of the
 * author's own the leaf is added.
 * Links to the web stay. What leads nowhere keeps its words alone; reading and the rules have reported it.
 */
export const remarkLinks: Plugin<[{readonly lookups: Pick<BodyLookups, 'crossReference'>}], Root> =
  ({lookups}) =>
  (tree) => {
    const urls = new Map<string, string>();
    visit(tree, 'definition', ({identifier, url}) => {
      if (!urls.has(identifier)) urls.set(identifier, url);
    });

    function resolve(node: Link | LinkReference): readonly PhrasingContent[] {
      const url = node.type === 'link' ? node.url : (urls.get(node.identifier) ?? '');
      if (linkKind(url) === 'outside') return [{...node, type: 'link', url: withLowerScheme(url)}];
      const target = linkKind(url) === 'inside' ? lookups.crossReference(url.slice(1)) : null;
      if (!target) return node.children.length > 0 ? node.children : [text(url)];
      const words = node.children.length > 0 ? node.children : [text(`${target.number} ${target.title}`)];
      const leaf = target.leaf.replaceAll(' ', '\u00A0');
      const isNumber = node.children.length > 0 && textOf(node) === target.number;
      const children = isNumber ? [text(leaf)] : [...words, text(` (leaf\u00A0${leaf})`)];
      return [{type: 'link', url: `#${target.anchor}`, children}];
    }

    visit(tree, (node, index, parent) => {
      if (!parent || index === undefined || (node.type !== 'link' && node.type !== 'linkReference')) return;
      const resolved = resolve(node);
      parent.children.splice(index, 1, ...resolved);
      return index + resolved.length;
    });
  };

/** `HTTPS:` and `https:` are the same; the sanitiser knows the second. */
function withLowerScheme(url: string): string {
  return url.replace(/^[^:]*:/, (scheme) => scheme.toLowerCase());
}

function text(value: string): PhrasingContent {
  return {type: 'text', value};
}
