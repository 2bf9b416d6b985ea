import type {Element} from 'hast';
import rehypeStringify from 'rehype-stringify';
import {unified} from 'unified';

const writer = unified().use(rehypeStringify).freeze();

/** HTML with one element to a line, so that a changed cell is one changed line in a review. */
export function showHtml(content: readonly Element[]): string {
  const html = writer.stringify({type: 'root', children: [...content]});
  return `${html.replaceAll(/(?<=.)<(?!\/)/g, '\n<').replaceAll('\u00a0', '&nbsp;')}\n`;
}
