import rehypeParse from 'rehype-parse';
import rehypeSanitize from 'rehype-sanitize';
import rehypeStringify from 'rehype-stringify';
import remarkDirective from 'remark-directive';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import {unified} from 'unified';
import {allowedBody, allowedFragment, allowedInline} from './allowed-html.ts';
import type {ComposeContext} from './compose-context.ts';
import {rehypeFilledSlots} from './plugins/rehype-filled-slots.ts';
import {rehypeLineMarks} from './plugins/rehype-line-marks.ts';
import {rehypeNotesBeside} from './plugins/rehype-notes-beside.ts';
import {rehypeWebLinks} from './plugins/rehype-web-links.ts';
import {remarkCitation} from './plugins/remark-citation.ts';
import {remarkCited} from './plugins/remark-cited.ts';
import {remarkComputedTable} from './plugins/remark-computed-table.ts';
import {remarkLinks} from './plugins/remark-links.ts';
import {remarkPhoto} from './plugins/remark-photo.ts';
import {remarkShiftedHeadings} from './plugins/remark-shifted-headings.ts';
import {remarkTypography} from './plugins/remark-typography.ts';
import {mayHoldAddress, remarkWithoutAddresses} from './plugins/remark-without-addresses.ts';
import {remarkWrittenAddresses} from './plugins/remark-written-addresses.ts';
import {remarkWrittenColons} from './plugins/remark-written-colons.ts';
import {remarkWrittenRows} from './plugins/remark-written-rows.ts';
import {createSlots} from './slots.ts';

// Every use of a plugin in the program stands in this file, in order, with its reason.

/** Text → tree. */
export const markdownParser = unified()
  .use(remarkParse)
  .use(remarkGfm, {singleTilde: false}) // Tables and footnotes; `~10 cm` is about ten centimetres, not struck out.
  .use(remarkDirective) // `::gauge` and the like.
  .use(remarkCitation) // After GFM: ours is asked first, so `[@key]` is no link reference.
  .use(remarkWrittenColons) // `Row 1:k2` is text, not a directive in the sentence.
  .freeze();

/** The same tree, sooner, for a text that cannot hold a bare address. */
const addresslessParser = markdownParser()
  .use(remarkWithoutAddresses) // After all the others: takes out what GFM has put in.
  .freeze();

/** The parser for `text`. */
export function markdownParserFor(text: string): typeof markdownParser {
  return mayHoldAddress(text) ? markdownParser : addresslessParser;
}

/** An item's tree → HTML. */
export function bodyComposer(context: ComposeContext) {
  return unified()
    .use(remarkShiftedHeadings) // The sheet's own heading stands above them.
    .use(remarkTypography) // Before anything of ours is put in: only the author's words are set.
    .use(remarkWrittenRows, context) // Before the tree becomes HTML, where a block is only code.
    .use(remarkComputedTable, context) // Directives stand where their tables belong.
    .use(remarkCited, context) // Before links, which may hold citations.
    .use(remarkPhoto, context) // Lifts pictures out of paragraphs, which cannot hold figures.
    .use(remarkLinks, context) // Last of the author's links.
    .use(remarkWrittenAddresses) // After links, which turn references into links.
    .use(remarkRehype, {clobberPrefix: context.idPrefix, ...footnotes}) // HTML in the text is dropped here.
    .use(rehypeSanitize, allowedBody) // After everything that the author can influence.
    .use(rehypeFilledSlots, context.slots) // After sanitising: it would take our tables, drawings and pictures out.
    .use(rehypeLineMarks, context) // After the slots: rows and tables are blocks too.
    .use(rehypeNotesBeside, context) // Last of all: a note stands beside a whole block.
    .use(rehypeStringify)
    .freeze();
}

/** A few words of front matter → HTML. */
export const inlineComposer = unified()
  .use(remarkTypography)
  .use(remarkCited, {citations: [], slots: createSlots()}) // A citation is printed as written.
  .use(remarkLinks, {lookups: {crossReference: () => null}}) // Only links to the web.
  .use(remarkRehype)
  .use(rehypeSanitize, allowedInline) // No blocks, no pictures.
  .use(rehypeStringify)
  .freeze();

/** HTML of the citation engine → HTML. */
export const fragmentReader = unified()
  .use(rehypeParse, {fragment: true})
  .use(rehypeSanitize, allowedFragment) // A library entry may hold anything.
  .use(rehypeWebLinks) // After the sanitiser has taken out what runs.
  .use(rehypeStringify)
  .freeze();

const footnotes = {footnoteLabel: 'Notes', footnoteLabelTagName: 'h3', footnoteBackContent: '↑'} as const;
