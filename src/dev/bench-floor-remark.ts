import {readdirSync, readFileSync} from 'node:fs';
import path from 'node:path';
import {pathToFileURL} from 'node:url';
import remarkDirective from 'remark-directive';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import {unified} from 'unified';

/** The texts of all Markdown files below `folder`, without their front matter. */
export function bareTexts(folder: string): readonly string[] {
  return readdirSync(folder, {recursive: true, encoding: 'utf8'})
    .filter((file) => file.endsWith('.md'))
    .map((file) => readFileSync(path.join(folder, file), 'utf8').replace(/^---\n[\s\S]*?\n---\n/, ''));
}

/**
 * Parses `texts` with remark alone, configured as the program's own parser but without anything of ours. The plugins are
 * attached by hand, as unified attaches them: processors of the program are assembled in one place only.
 */
export function parseBare(texts: readonly string[]): void {
  const processor = unified();
  remarkParse.call(processor);
  remarkGfm.call(processor, {singleTilde: false});
  remarkDirective.call(processor);
  processor.freeze();
  for (const text of texts) processor.parse(text);
}

// As a process: what parsing costs with start-up and loading.
if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  parseBare(bareTexts(process.argv[2] ?? '.'));
