import type {Finding, Place} from '../diagnostics/finding.ts';
import type {Problem, Span} from '../support/result.ts';

/** What could not be read in a file that was to be imported, as findings of that file. */
export function importFindings(file: string, text: string, problems: readonly Problem[]): readonly Finding[] {
  const placeOf = placesIn(text);
  return problems.slice(0, mostFindings).map(({message, hint, span}) => ({
    rule: importedFileRule.id,
    severity: importedFileRule.severity,
    file,
    place: placeOf(span),
    message,
    hint,
  }));
}

/** Whoever has this many faults to mend saves the file anew. */
const mostFindings = 100;

/** The one law about files that are no part of the binder. */
export const importedFileRule = {
  id: 'imported-file',
  summary: 'what `import` reads is whole: every brace, quotation mark and record is closed',
  severity: 'error',
  explanation:
    'An entry that cannot be read whole is left out of the library, so that nothing is in it by half; the entries around it are ' +
    'added. Mend the place in the file, or save it anew in the program it comes from, and import it again: what the library ' +
    'has by then is left out.',
} as const;

function placesIn(text: string): (span: Span) => Place {
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({index}) => index + 1)];
  const point = (offset: number) => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle - 1;
    }
    return {line: low + 1, column: offset - (starts[low] ?? 0) + 1};
  };
  return ({start, end}) => {
    const [from, to] = [point(start), point(Math.max(start, end))];
    return {line: from.line, column: from.column, endLine: to.line, endColumn: to.column};
  };
}
