import type {CitationClusterNode} from 'mdast';
import type {Place} from '../diagnostics/finding.ts';

/** Turns offsets in the pieces, joined by one space between each two, into a place in the file. */
export function piecePlace(pieces: CitationClusterNode['pieces']): (start: number, end: number) => Place {
  const point = (offset: number) => {
    let passed = 0;
    for (const {text, line, column} of pieces) {
      if (offset <= passed + text.length) return {line, column: column + offset - passed};
      passed += text.length + 1;
    }
    const last = pieces.at(-1);
    return last ? {line: last.line, column: last.column + last.text.length} : {line: 1, column: 1};
  };
  return (start, end) => {
    const [from, to] = [point(start), point(end)];
    return {line: from.line, column: from.column, endLine: to.line, endColumn: to.column};
  };
}
