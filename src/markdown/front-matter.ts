import matter from 'gray-matter';
import type {Place} from '../diagnostics/finding.ts';

/** A file taken apart. `yaml` begins on line 2; `bodyStart` is the offset at which the Markdown begins. */
export interface FrontMatter {
  readonly yaml: string;
  readonly bodyStart: number;
  readonly problem: {readonly message: string; readonly hint: string; readonly place: Place} | null;
}

/** In UTF-16 units: the fields of one item, many times over. */
const largest = 64_000;
/** More lines than any item needs; gray-matter's search for comments is slow on long runs of empty lines. */
const mostLines = 2000;

/**
 * Splits the fields between the two lines of three hyphens from the Markdown below them. `text` has no byte order mark.
 * When the fields cannot be told from the rest, everything after the first line counts as Markdown, so nothing is lost.
 */
export function splitFrontMatter(text: string): FrontMatter {
  const firstLine = /^[^\r\n]*/.exec(text)?.[0] ?? '';
  const afterFirstLine = firstLine.length + (/^\r?\n/.exec(text.slice(firstLine.length))?.[0].length ?? 0);
  const without = (bodyStart: number, message: string, hint: string): FrontMatter => ({
    yaml: '',
    bodyStart,
    problem: {message, hint, place: {line: 1, column: 1, endLine: 1, endColumn: firstLine.length + 1}},
  });

  if (!/^---(?!-)/.test(firstLine)) {
    return without(
      0,
      'the file does not begin with a line of three hyphens',
      'Begin it with `---`, the fields such as `requirement: S-07`, and a second `---`.',
    );
  }
  const closing = /\n---[ \t]*(?=\r?\n|$)/.exec(text.slice(0, largest + firstLine.length));
  const bodyStart = closing ? closing.index + closing[0].length : afterFirstLine;
  const language = firstLine.slice(3).trim();
  if (language !== '') {
    return without(
      bodyStart,
      `\`${language}\` stands after the first three hyphens; fields in that language are not read`,
      'Leave only `---` on the first line and write the fields as `name: value`.',
    );
  }
  if (!closing) {
    return without(
      afterFirstLine,
      text.length > largest
        ? `no second line of three hyphens follows within \`${largest}\` characters`
        : 'the fields begin with three hyphens and never end',
      'Put a line of three hyphens below the last field.',
    );
  }
  const block = text.slice(0, bodyStart);
  if (block.split('\n').length > mostLines) {
    return without(bodyStart, `the fields take more than \`${mostLines}\` lines`, 'Shorten them.');
  }
  const {matter: fields} = matter(block, {language: 'yaml', engines: noEngines});
  const end = '---'.length + fields.length;
  if (end !== closing.index) {
    const line = fields.split('\n').length + 1;
    const length = /^[^\r\n]*/.exec(block.slice(end + 1))?.[0].length ?? 0;
    return {
      yaml: '',
      bodyStart,
      problem: {
        message: 'a line among the fields begins with three hyphens and goes on',
        hint: 'Keep three hyphens for the lines before the first and after the last field.',
        place: {line, column: 1, endLine: line, endColumn: length + 1},
      },
    };
  }
  return {yaml: fields.replace(/^[^\n]*\n/, '').replace(/\r$/, ''), bodyStart, problem: null};
}

/** gray-matter only splits: whatever it would read, run or write is refused here. It also runs JavaScript when no engine is given. */
const refuse = {
  parse: (): object => ({}),
  stringify: (): string => '',
};
const noEngines = {
  yaml: refuse,
  yml: refuse,
  json: refuse,
  js: refuse,
  javascript: refuse,
  coffee: refuse,
  cson: refuse,
  coffeescript: refuse,
  toml: refuse,
};
