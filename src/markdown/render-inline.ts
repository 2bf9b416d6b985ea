import type {PhrasingContent, Root} from 'mdast';
import type {SafeHtml} from '../model/composed.ts';
import {inlineComposer, markdownParser} from './processor.ts';

/**
 * A short text of the front matter as HTML for the inside of a line: emphasis, code and links. Blocks are joined by a
 * space.
 */
export function renderInline(markdown: string): SafeHtml {
  const blocks = markdownParser.runSync(markdownParser.parse(markdown), markdown).children;
  const inline = blocks.flatMap((block, index): readonly PhrasingContent[] => {
    const content: readonly PhrasingContent[] =
      block.type === 'paragraph' || block.type === 'heading' ? block.children : [];
    return index > 0 && content.length > 0 ? [{type: 'text', value: ' '}, ...content] : content;
  });
  const tree: Root = {type: 'root', children: [{type: 'paragraph', children: [...inline]}]};
  // Sanitised and written out by the processor: this is what the brand stands for.
  return inlineComposer.stringify(inlineComposer.runSync(tree)) as SafeHtml;
}
