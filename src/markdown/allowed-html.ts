import type {Options} from 'rehype-sanitize';

/** What of an author's Markdown may reach a page. No class, no style, no picture: these come only from us, in slots. */
export const allowedBody: Options = {
  tagNames: [
    ...['h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'p', 'blockquote', 'pre', 'ul', 'ol', 'li', 'hr', 'section'],
    ...['table', 'thead', 'tbody', 'tr', 'th', 'td'],
    ...['em', 'strong', 'del', 'code', 'a', 'sup', 'small', 'br', 'input', 'slot'],
  ],
  attributes: {
    a: ['href', 'id'],
    li: ['id'],
    ol: ['start'],
    th: [['align', 'left', 'center', 'right']],
    td: [['align', 'left', 'center', 'right']],
    input: [['type', 'checkbox'], ['disabled', true], 'checked'],
    slot: ['name'],
  },
  required: {input: {type: 'checkbox', disabled: true}},
  protocols: {href: ['http', 'https', 'mailto']},
  // Ids are those of footnotes, made by us with the item's own prefix.
  clobber: [],
  clobberPrefix: '',
  ancestors: {
    ...Object.fromEntries(['thead', 'tbody', 'tr', 'th', 'td'].map((name) => [name, ['table']])),
    li: ['ol', 'ul'],
  },
  strip: ['script', 'style'],
};

/** What a few words of front matter may hold. */
export const allowedInline: Options = {
  tagNames: ['em', 'strong', 'del', 'code', 'a'],
  attributes: {a: ['href']},
  protocols: {href: ['http', 'https', 'mailto']},
};

/** What may come from the citation engine: it marks up titles and repeats what stands in the library. */
export const allowedFragment: Options = {
  tagNames: ['i', 'b', 'em', 'strong', 'span', 'sup', 'sub', 'a'],
  attributes: {a: ['href']},
  protocols: {href: ['http', 'https']},
  strip: ['script', 'style', 'template', 'iframe', 'object', 'svg', 'math'],
};
