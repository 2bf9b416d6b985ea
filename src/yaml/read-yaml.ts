import {Composer, type Document, LineCounter, Parser, visit} from 'yaml';
import {fileStart, type Place} from '../diagnostics/finding.ts';
import {describeYamlError} from './describe-yaml-error.ts';
import {nestingDepth} from './nesting-depth.ts';
import {placesIn, type Range} from './place-tree.ts';
import type {Places} from './places.ts';
import {toPlain} from './to-plain.ts';

export interface YamlProblem {
  readonly message: string;
  readonly hint: string;
  readonly place: Place;
}

export interface YamlDocument {
  /**
   * Plain values: strings, numbers, booleans, null, arrays and objects without a prototype to pollute. Null when unreadable.
   * Where only a part is faulty, this is what the rest says.
   */
  readonly value: unknown;
  readonly places: Places;
  readonly problems: readonly YamlProblem[];
}

/** In UTF-16 units: a library of some six hundred sources, and little enough to be read in a moment. */
export const largestYaml = 256_000;
export const deepestYaml = 30;
/** Whoever has this many faults to mend will read the file again before the next. */
const mostProblems = 200;

/**
 * Reads one YAML 1.2 document (core schema: dates, `yes` and `1:30` stay text). Never throws: aliases, merges, tags, duplicate
 * keys, more than `largestYaml` characters and nesting deeper than 30 are problems with a place. `firstLine` is the line of the file on which `text`
 * begins. A byte order mark takes no column.
 */
export function readYaml(text: string, firstLine = 1): YamlDocument {
  // Lines and columns stay true: only the ends of lines become shorter.
  const content = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const lineCounter = new LineCounter();
  // Not left to the parser: it misses line ends after some faults.
  lineCounter.addNewLine(0);
  for (const {index} of content.matchAll(/\n/g)) lineCounter.addNewLine(index + 1);
  const placeOf = placeIn(content, lineCounter, firstLine);
  const unreadable = (message: string, hint: string): YamlDocument => {
    const place = {...fileStart, line: firstLine, endLine: firstLine};
    const root = {key: null, value: null, slice: null, children: new Map(), isList: false};
    return {value: null, places: placesIn(root, () => place), problems: [{message, hint, place}]};
  };

  if (content.length > largestYaml) {
    return unreadable(
      `these fields are \`${content.length}\` characters long; \`${largestYaml}\` are read`,
      'Shorten them, or write long texts in items.',
    );
  }
  const tokens = [...new Parser().parse(content)];
  // Composing recurses: the depth must be known before, or the stack may end the whole program.
  if (nestingDepth(tokens) > deepestYaml) {
    return unreadable(
      `lists and keys stand inside each other more than \`${deepestYaml}\` levels deep`,
      'Write the fields one below the other, as in the examples.',
    );
  }
  const composer = new Composer({schema: 'core', uniqueKeys: false, prettyErrors: false, stringKeys: false});
  const documents = [...composer.compose(tokens, true, content.length)];
  const [document, second] = documents;
  if (!document) return unreadable('nothing is written here', 'Write the fields, one to a line.');

  const problems: YamlProblem[] = faultsOf(document).map(({code, message, pos}) => ({
    ...describeYamlError(code, message),
    place: placeOf(/quote$/.test(message) ? openingQuote(document, pos[0]) : widened(content, pos)),
  }));
  if (second) {
    const start = second.range[0];
    problems.push({...describeYamlError('MULTIPLE_DOCS', ''), place: placeOf({start, end: start})});
  }
  const plain = toPlain(document.contents, content);
  for (const {range, ...problem} of plain.problems) problems.push({...problem, place: placeOf(range)});
  return {
    value: plain.value,
    places: placesIn(plain.root, placeOf),
    problems: problems
      .sort((a, b) => a.place.line - b.place.line || a.place.column - b.place.column)
      .slice(0, mostProblems),
  };
}

/** The faults the library names, one a place: what follows from the first at the same place is left out. */
function faultsOf(document: Document.Parsed) {
  // Explicit tags are reported by us, whether the library knows them or not.
  const faults = [...document.errors, ...document.warnings].filter(({code}) => code !== 'TAG_RESOLVE_FAILED');
  const first = new Map([...faults].reverse().map((fault) => [fault.pos[0], fault]));
  return faults.filter((fault) => first.get(fault.pos[0]) === fault);
}

/** The library marks a fault by one character; the word that begins there shows it better. */
function widened(content: string, [start, end]: readonly [number, number]): Range {
  if (end - start > 1) return {start, end: Math.min(end, content.length)};
  const word = /^(?:\\.|[^\s,[\]{}"']*)/.exec(content.slice(start, start + 80))?.[0] ?? '';
  return {start, end: Math.min(Math.max(end, start + word.length), content.length)};
}

/** An unclosed quotation is noticed where the text ends; the author needs the place where it begins. */
function openingQuote(document: Document.Parsed, end: number): Range {
  let start = end;
  visit(document, {
    Scalar(_, {range}) {
      if (range && range[1] === end) start = range[0];
    },
  });
  return {start, end: start + 1};
}

function placeIn(content: string, lineCounter: LineCounter, firstLine: number): (range: Range) => Place {
  const point = (offset: number) => {
    const {line, col} = lineCounter.linePos(Math.min(offset, content.length));
    return {line: line + firstLine - 1, column: col};
  };
  return (range) => {
    // A range ends where its last visible character ends, not in the line after it.
    const written = content.slice(range.start, range.end).trimEnd().length;
    const [start, end] = [point(range.start), point(range.start + written)];
    return {line: start.line, column: start.column, endLine: end.line, endColumn: end.column};
  };
}
