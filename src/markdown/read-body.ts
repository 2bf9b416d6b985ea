import type {Definition, Nodes, Root} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import type {Place} from '../diagnostics/finding.ts';
import type {Body} from '../model/body.ts';
import {readCitations} from '../model/read-citations.ts';
import type {ReadingFault} from '../model/reading-rules.ts';
import {eachNode} from '../support/each-node.ts';
import {countWords} from './count-words.ts';
import {linePlaces} from './line-places.ts';
import {linkKind} from './link-kind.ts';
import {nodePlace} from './node-place.ts';
import {piecePlace} from './piece-place.ts';
import {readQuotations} from './read-quotations.ts';

type Writable<T> = {-readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K]};

/** Gathers from a parsed tree what rules and layouts ask for. Numbers the tree's citation clusters. `text` is the whole file. */
export function readBody(
  tree: Root,
  text: string,
): {readonly body: Body; readonly faults: readonly ReadingFault[]} {
  const faults: ReadingFault[] = [];
  const lines = text.split(/\r\n|\n|\r/);
  const body: Writable<Body> = {
    tree,
    clusters: [],
    headings: [],
    images: [],
    crossReferences: [],
    links: [],
    rawHtml: [],
    directives: [],
    blocks: [],
    quotations: [...readQuotations(tree, lines)],
    words: countWords(tree),
  };
  const definitions = definitionsIn(tree);

  function readLink(url: string | undefined, place: Place): void {
    if (url === undefined) return;
    if (linkKind(url) === 'inside') body.crossReferences.push({target: url.slice(1), place});
    else body.links.push({url, place});
    if (linkKind(url) === 'nowhere') faults.push(deadLink(url, place));
  }

  eachNode<Nodes>(tree, (node, parent) => {
    // GFM turns some bare addresses into links without saying where they stand.
    const place = nodePlace(node.position ? node : (parent ?? node));
    switch (node.type) {
      case 'citationCluster': {
        const written = node.pieces.map((piece) => piece.text).join(' ');
        const {citations, problems} = readCitations(written, piecePlace(node.pieces));
        for (const problem of problems) faults.push({rule: 'citation-form', ...problem});
        if (problems.length > 0) break;
        node.index = body.clusters.length;
        node.cluster = {...node.cluster, citations: citations.map(({citation}) => citation)};
        body.clusters.push({cluster: node.cluster, place, citationPlaces: citations});
        break;
      }
      case 'heading':
        body.headings.push({depth: node.depth, text: textOf(node), place});
        break;
      case 'image':
        body.images.push({file: node.url, description: node.alt ?? '', title: node.title ?? null, place});
        break;
      case 'imageReference': {
        const definition = definitions.get(node.identifier);
        const [file, title] = [definition?.url ?? '', definition?.title ?? null];
        body.images.push({file, description: node.alt ?? '', title, place});
        break;
      }
      case 'link':
        readLink(node.url, place);
        break;
      case 'linkReference':
        readLink(definitions.get(node.identifier)?.url, place);
        break;
      case 'html':
        body.rawHtml.push({text: node.value, place});
        break;
      case 'leafDirective':
      case 'containerDirective': {
        const attributes = Object.entries(node.attributes ?? {}).map(([key, value]) => [key, value ?? '']);
        body.directives.push({name: node.name, attributes: Object.fromEntries(attributes), place});
        break;
      }
      case 'code':
        if (node.lang) {
          const {lang: language, value} = node;
          body.blocks.push({language, text: value, place, linePlaces: linePlaces(node, lines)});
        }
    }
  });
  return {body, faults};
}

/** Link definitions by identifier; of two with one identifier the first counts, as CommonMark says. */
function definitionsIn(tree: Root): ReadonlyMap<string, Definition> {
  const definitions = new Map<string, Definition>();
  eachNode<Nodes>(tree, (node) => {
    if (node.type === 'definition' && !definitions.has(node.identifier))
      definitions.set(node.identifier, node);
  });
  return definitions;
}

function deadLink(url: string, place: Place): ReadingFault {
  return {
    rule: 'dead-link',
    place,
    message: `\`${url}\` leads nowhere from a printed page; only its words are printed`,
    hint: 'Write a whole web address with `https://`, or `#` and the id of a requirement, such as `#S-07`.',
  };
}
