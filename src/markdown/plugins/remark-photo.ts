import type {Element} from 'hast';
import type {Image, PhrasingContent, Root} from 'mdast';
import type {Plugin} from 'unified';
import {visit} from 'unist-util-visit';
import {setTypography} from '../../support/typography.ts';
import type {ComposeContext} from '../compose-context.ts';

/**
 * Pictures become figures with a caption: the title if there is one, else the description. A picture in the middle of a
 * paragraph stands below it; in a table or a heading it has no caption.
 */
export const remarkPhoto: Plugin<[ComposeContext], Root> = (context) => (tree) => {
  visit(tree, 'imageReference', (node, index, parent) => {
    const definition = findDefinition(tree, node.identifier);
    if (!parent || index === undefined || !definition) return;
    const {alt, position} = node;
    parent.children[index] = {type: 'image', url: definition.url, title: definition.title, alt, position};
  });
  visit(tree, 'paragraph', (node, index, parent) => {
    if (!parent || index === undefined) return;
    const images = node.children.filter((child): child is Image => child.type === 'image');
    if (images.length === 0) return;
    node.children = node.children.filter((child) => child.type !== 'image');
    const figures = images.map((image) => context.slots.keep([figure(image, context)], image));
    const rest = node.children.some(hasContent) ? [node] : [];
    parent.children.splice(index, 1, ...rest, ...figures);
    return index + rest.length + figures.length;
  });
  visit(tree, 'image', (node, index, parent) => {
    if (parent && index !== undefined) parent.children[index] = context.slots.keep([picture(node, context)]);
  });
};

function findDefinition(tree: Root, identifier: string) {
  let found: {readonly url: string; readonly title: string | null} | null = null;
  visit(tree, 'definition', (node) => {
    if (node.identifier === identifier) found ??= {url: node.url, title: node.title ?? null};
  });
  // The compiler does not see that the visitor has run.
  return found as {readonly url: string; readonly title: string | null} | null;
}

function hasContent(node: PhrasingContent): boolean {
  return node.type !== 'break' && !(node.type === 'text' && node.value.trim() === '');
}

function figure(image: Image, context: ComposeContext): Element {
  const photo = context.lookups.photo(image.url);
  const caption = image.title ?? image.alt ?? '';
  return {
    type: 'element',
    tagName: 'figure',
    properties: {className: ['photo'], ...(photo ? {style: `width: ${photo.widthMillimetres}mm`} : {})},
    children: [
      picture(image, context),
      {
        type: 'element',
        tagName: 'figcaption',
        properties: {},
        children: [{type: 'text', value: setTypography(caption)}],
      },
    ],
  };
}

function picture(image: Image, {lookups}: ComposeContext): Element {
  const photo = lookups.photo(image.url);
  if (photo) {
    const {source: src, description} = photo;
    const alt = image.alt ?? description;
    return {
      type: 'element',
      tagName: 'img',
      properties: {
        src,
        alt,
        style: `width: ${photo.widthMillimetres}mm; height: ${photo.heightMillimetres}mm`,
      },
      children: [],
    };
  }
  return {
    type: 'element',
    tagName: 'span',
    properties: {className: ['missing']},
    children: [{type: 'text', value: `(the picture ${image.url} cannot be shown)`}],
  };
}
