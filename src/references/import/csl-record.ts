import {failure, type Problem, type Result, success} from '../../support/result.ts';

/** An entry in CSL-JSON's terms, not yet checked: what every reader of a foreign file ends in. */
export type CslRecord = Readonly<Record<string, unknown>>;

/** The files of other programs that can be read. */
export type ImportFormat = 'bib' | 'ris' | 'csl-json';

/** Whether `value` is an object with fields; lists are none. */
export function isRecord(value: unknown): value is CslRecord {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The text of a value that is a text or a number; null for anything else and for a text of nothing but space. */
export function textOf(value: unknown): string | null {
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  return typeof value === 'string' && value.trim() !== '' ? value : null;
}

const endings: Readonly<Record<string, ImportFormat>> = {
  bib: 'bib',
  bibtex: 'bib',
  biblatex: 'bib',
  ris: 'ris',
  json: 'csl-json',
  csljson: 'csl-json',
};

/** The format of a file by the ending of its name; where that says nothing, by what its text begins with. */
export function importFormat(fileName: string, text: string): Result<ImportFormat> {
  const ending = /\.([^./\\]+)$/.exec(fileName)?.[1]?.toLowerCase() ?? '';
  const named = Object.hasOwn(endings, ending) ? endings[ending] : undefined;
  if (named) return success(named);
  if (/^\s*[[{]/.test(text)) return success('csl-json');
  if (/^TY {1,2}-/m.test(text)) return success('ris');
  if (/^[ \t]*@[A-Za-z]+[ \t]*[{(]/m.test(text)) return success('bib');
  const problem: Problem = {
    message: 'this is none of the files that can be imported',
    hint: 'Save the references as BibTeX or BibLaTeX (`.bib`), RIS (`.ris`) or CSL-JSON (`.json`) in the other program.',
    span: {start: 0, end: 0},
  };
  return failure(problem);
}
