import {fileStart, type Place} from '../diagnostics/finding.ts';
import type {ReadingFault} from '../model/reading-rules.ts';

/**
 * What is read at most, in characters where nothing else is said. Far more than any item needs; beyond it the Markdown
 * parser may take minutes or run out of stack, which would end the whole program.
 */
export const limits = {
  file: 262_144,
  lines: 10_000,
  line: 20_000,
  /** Lists and quotes inside each other. */
  nesting: 50,
  /** Lines without an empty one between them: a paragraph, a table, a list without gaps. */
  block: 50_000,
  blockLines: 2_000,
  /** Characters of a block that may begin emphasis, code, a link or HTML. */
  marks: 1_000,
  /** What the marks and the nesting of the whole file may cost, in steps of about the same time as measured. */
  effort: 6_000_000,
  /** Columns times rows, had every line of the block as many as the widest. */
  cells: 20_000,
  /** Blocks that `:::name` opens. */
  containers: 50,
} as const;

/** The first place where `text` goes beyond a limit. Nothing of such a text is parsed. */
export function faultOfSize(text: string): ReadingFault | null {
  if (text.length > limits.file) {
    return tooLong(
      {line: 1, column: 1, endLine: 1, endColumn: 1},
      'the file',
      'characters',
      text.length,
      'file',
    );
  }
  const lines = text.split(/\r\n|\n|\r/);
  if (lines.length > limits.lines) return tooLong(fileStart, 'the file', 'lines', lines.length, 'lines');
  const nesting = nestingMeter();
  let block = emptyBlock(1);
  let fence: string | null = null;
  let containers = 0;
  let effort = 0;
  for (const [index, line] of lines.entries()) {
    const number = index + 1;
    const here: Place = {line: number, column: 1, endLine: number, endColumn: Math.min(line.length, 80) + 1};
    if (line.length > limits.line) return tooLong(here, 'this line', 'characters', line.length, 'line');

    const mark = /^[\s>]*(?:(?:[-+*]|\d{1,9}[.)])\s+)*(`{3,}|~{3,})/.exec(line)?.[1];
    if (fence !== null) {
      if (mark?.startsWith(fence)) fence = null;
      continue;
    }
    if (mark) fence = mark;

    const depth = nesting(line);
    effort += 50 * depth * depth;
    if (depth > limits.nesting)
      return tooLong(here, 'lists and quotes here', 'levels deep', depth, 'nesting');
    if (/^[\s>]*:{3,}\w/.test(line) && ++containers > limits.containers) {
      return tooLong(here, 'the file', 'blocks opened by `:::`', containers, 'containers');
    }
    if (line.trim() === '') {
      effort += effortOf(block);
      block = emptyBlock(number + 1);
      continue;
    }
    block = withLine(block, line);
    const fault = faultOfBlock(block);
    if (fault) return fault;
    if (effort + effortOf(block) > limits.effort) {
      return tooLong(
        here,
        'the text up to here',
        'steps of work in its marks such as `*` and `[`',
        effort,
        'effort',
      );
    }
  }
  return null;
}

interface Block {
  readonly firstLine: number;
  readonly length: number;
  readonly lines: number;
  readonly marks: number;
  readonly columns: number;
  /** Different numbers of backticks that stand side by side. */
  readonly ticks: ReadonlySet<string>;
}

function emptyBlock(firstLine: number): Block {
  return {firstLine, length: 0, lines: 0, marks: 0, columns: 0, ticks: new Set()};
}

function withLine(block: Block, line: string): Block {
  return {
    firstLine: block.firstLine,
    length: block.length + line.length,
    lines: block.lines + 1,
    marks: block.marks + (line.match(/[*_~@[<{]|`+/g)?.length ?? 0),
    columns: Math.max(block.columns, line.split('|').length),
    ticks: line.includes('`') ? new Set([...block.ticks, ...(line.match(/`+/g) ?? [])]) : block.ticks,
  };
}

/**
 * The parser's work for a block: it compares marks with each other, and looks through the whole block for the end of code
 * once for every number of backticks that has none.
 */
function effortOf({marks, length, ticks}: Block): number {
  return marks * marks + 4 * ticks.size * length;
}

function faultOfBlock({firstLine, length, lines, marks, columns}: Block): ReadingFault | null {
  const place = {line: firstLine, column: 1, endLine: firstLine, endColumn: 1};
  const what = 'the text from here to the next empty line';
  if (length > limits.block) return tooLong(place, what, 'characters', length, 'block');
  if (lines > limits.blockLines) return tooLong(place, what, 'lines', lines, 'blockLines');
  if (marks > limits.marks) return tooLong(place, what, 'marks such as `*` and `[`', marks, 'marks');
  if (columns > 1 && columns * lines > limits.cells) {
    return tooLong(place, what, 'table cells', columns * lines, 'cells');
  }
  return null;
}

function tooLong(
  place: Place,
  what: string,
  unit: string,
  count: number,
  limit: keyof typeof limits,
): ReadingFault {
  return {
    rule: 'too-long',
    place,
    message: `${what} has \`${count}\` ${unit}; up to \`${limits[limit]}\` are read`,
    hint: 'Check what stands here: text of this size is a slip, or belongs into several items.',
  };
}

/** Tells for one line after the other how deep its lists and quotes stand; never less than the parser will find. */
function nestingMeter(): (line: string) => number {
  /** Columns of the markers of the lists that are open. */
  let open: number[] = [];
  return (line) => {
    if (line.trim() === '') return 0;
    const prefix = /^[\s>]*/.exec(line)?.[0] ?? '';
    let column = prefix.length;
    let quotes = prefix.split('>').length - 1;
    open = open.filter((marker) => marker < column);
    for (const [marker] of line.slice(column).matchAll(/([-+*]|\d{1,9}[.)])(?:[ \t]+|$)|>[ \t]*/gy)) {
      if (marker.startsWith('>')) quotes++;
      else open.push(column);
      column += marker.length;
    }
    return open.length + quotes;
  };
}
