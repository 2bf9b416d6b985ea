import type {Root} from 'mdast';
import type {Finding} from '../diagnostics/finding.ts';
import type {ParsedItem} from '../model/parsed-item.ts';
import {type ReadingFault, readingFinding} from '../model/reading-rules.ts';
import {readYaml} from '../yaml/read-yaml.ts';
import {splitFrontMatter} from './front-matter.ts';
import {faultOfSize} from './input-limits.ts';
import {markdownParserFor} from './processor.ts';
import {readBody} from './read-body.ts';
import {unknownDirective} from './unknown-directive.ts';

/**
 * Takes a Markdown file apart: fields, tree, and what stands where. Never throws; every position counts in the whole
 * file. `file` is the path within the binder folder. Directives other than `knownDirectives` are reported when these are given.
 */
export function parseItem(file: string, text: string, knownDirectives?: readonly string[]): ParsedItem {
  // Lines and columns stay true: only the ends of lines become shorter.
  const content = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const finding = (fault: ReadingFault): Finding => readingFinding(file, fault);
  const {yaml: written, bodyStart, problem} = splitFrontMatter(content);
  const yaml = readYaml(written, 2);
  const fieldFaults = [
    ...(problem ? [{rule: 'front-matter', ...problem} as const] : []),
    ...yaml.problems.map((fault) => ({rule: 'yaml-syntax', ...fault}) as const),
  ];

  const fields = content.slice(0, bodyStart);
  // A second byte order mark becomes a space: the parser would leave it out.
  const below = content.slice(bodyStart).replace(/^\uFEFF/, ' ');
  // The fields become blank, so that every line and column counts in the whole file.
  const sizeFault = faultOfSize(fields.replace(/[^\n]+/g, (line) => ' '.repeat(line.length)) + below);
  // The parser looks at every space: it gets only the ends of the lines.
  const markdown = fields.replace(/[^\n]+/g, '') + below;
  const parser = markdownParserFor(markdown);
  const tree: Root = sizeFault
    ? {type: 'root', children: []}
    : parser.runSync(parser.parse(markdown), markdown);
  const {body, faults} = readBody(tree, content);
  const unknown = body.directives
    .filter(({name}) => knownDirectives && name !== 'pagebreak' && !knownDirectives.includes(name))
    .map(({name, place}) => ({...unknownDirective(name, knownDirectives), place}));
  const all = [...fieldFaults, ...(sizeFault ? [sizeFault] : []), ...faults, ...unknown];
  return {file, text: content, yaml, body, findings: all.map(finding)};
}
