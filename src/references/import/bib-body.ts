import type {Problem} from '../../support/result.ts';
import {type BibMacros, spaceAt} from './bib-tokens.ts';
import {notClosed, readBibValue} from './bib-value.ts';

export interface BibField {
  /** In small letters. */
  readonly name: string;
  /** TeX, as written between the delimiters. */
  readonly text: string;
}

/** What stands between the braces of an entry, as far as it could be read. */
export interface BibBody {
  readonly key: string | null;
  readonly fields: readonly BibField[];
  /** Names used as a `@string` that there is not; they are taken as text. */
  readonly unknownMacros: readonly string[];
  readonly problem: Problem | null;
  /** The offset behind the body, or where reading stopped. */
  readonly end: number;
}

interface BodyForm {
  readonly opening: string;
  readonly macros: BibMacros;
  readonly takesKey: boolean;
}

/** Reads key and fields behind the `{` or `(` of an entry. A comma that is missing between two fields is passed over. */
export function readBibBody(text: string, start: number, {opening, macros, takesKey}: BodyForm): BibBody {
  const closing = opening === '(' ? ')' : '}';
  const fields: BibField[] = [];
  const unknownMacros: string[] = [];
  const key = takesKey ? keyAt(text, start) : null;
  let at = key?.end ?? start;
  /** One that is not closed often swallows the fields after it. */
  let lastValue: {readonly start: number; readonly text: string} | null = null;
  const ended = (problem: Problem | null, end: number): BibBody => ({
    key: key?.text || null,
    fields,
    unknownMacros,
    problem,
    end,
  });
  for (;;) {
    at = spaceAt(text, at);
    const character = text.charAt(at);
    if (character === closing) return ended(null, at + 1);
    if (character === ',') {
      at++;
      continue;
    }
    if (character === '' || character === '@') {
      const swallower = lastValue && /\n\s{0,80}[A-Za-z]+\s{0,80}=\s{0,80}["{\d]/.test(lastValue.text);
      const blamed = swallower && lastValue ? lastValue.start : start - 1;
      return ended(notClosed(blamed, text.charAt(blamed)), at);
    }
    const name = nameAt(text, at);
    const equals = name === null ? at : spaceAt(text, name.end);
    if (name === null || text.charAt(equals) !== '=') return ended(stray(text, at), at);
    const valueStart = spaceAt(text, equals + 1);
    const value = readBibValue(text, valueStart, macros);
    if ('message' in value) return ended(value, valueStart);
    fields.push({name: name.text.toLowerCase(), text: value.text});
    unknownMacros.push(...value.unknownMacros);
    lastValue = {start: valueStart, text: value.text};
    at = value.end;
  }
}

interface Token {
  readonly text: string;
  readonly end: number;
}

/** What stands before the first comma; null where a field stands at once. */
function keyAt(text: string, start: number): Token | null {
  keyForm.lastIndex = start;
  const match = keyForm.exec(text);
  return match && {text: match[1] ?? '', end: keyForm.lastIndex};
}

function nameAt(text: string, start: number): Token | null {
  nameForm.lastIndex = start;
  const name = nameForm.exec(text)?.[0];
  return name === undefined ? null : {text: name, end: start + name.length};
}

const keyForm = /\s*([^,={}"\s](?:[^,={}"\n]{0,300}?))?\s*(?:,|(?=[})]))/y;
const nameForm = /[^\s=,{}()"#%@\\]{1,100}/y;

function stray(text: string, start: number): Problem {
  const length = /^[^\s,}]{1,40}/.exec(text.slice(start, start + 40))?.[0].length ?? 1;
  return {
    message: `\`${text.slice(start, start + length)}\` is no field with a value`,
    hint: 'Write `name = {value}` with a comma after it; braces within a value stand in pairs. Then import the file again.',
    span: {start, end: start + length},
  };
}
