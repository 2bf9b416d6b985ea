import {pathToFileURL} from 'node:url';
import {bareTexts} from './bench-floor-remark.ts';

/*
 * `node bench-peer-markdown.js NAME ENTRY FOLDER`: turns the Markdown files of a folder into HTML with the library of
 * that name, as the simplest program around it would. Front matter is cut off first.
 */

// biome-ignore lint/suspicious/noExplicitAny: a library that may not be here has no types here.
type Library = any;
type Convert = (text: string) => string;

const libraries: Readonly<Record<string, (library: Library) => Convert>> = {
  commonmark: ({Parser, HtmlRenderer}) => {
    const [parser, renderer] = [new Parser(), new HtmlRenderer()];
    return (text) => renderer.render(parser.parse(text));
  },
  marked:
    ({marked}) =>
    (text) =>
      marked.parse(text),
  'markdown-it': ({default: MarkdownIt}) => {
    const converter = new MarkdownIt();
    return (text) => converter.render(text);
  },
  micromark:
    ({micromark}) =>
    (text) =>
      micromark(text),
};

const [name = '', entry = '', folder = '.'] = process.argv.slice(2);
const imported: Library = await import(pathToFileURL(entry).href);
// Older packages put everything below `default`.
const convert = libraries[name]?.({...imported.default, ...imported});
if (convert === undefined) throw new Error(`no library called ${name} is known here`);
let length = 0;
for (const text of bareTexts(folder)) length += convert(text).length;
console.log(length);
