/**
 * The values a PDF is made of (ISO 32000-1, section 7.3), read from text in which each character is one byte.
 * A name keeps its slash (`/Page`), so that it cannot be taken for a string.
 */
export type PdfValue =
  | number
  | boolean
  | null
  | PdfName
  | PdfString
  | PdfReference
  | readonly PdfValue[]
  | PdfDictionary;
export type PdfName = `/${string}`;
export type PdfDictionary = ReadonlyMap<PdfName, PdfValue>;
/** `bytes` has one character a byte. */
export interface PdfString {
  readonly bytes: string;
}
export interface PdfReference {
  readonly object: number;
}

export function isName(value: PdfValue): value is PdfName {
  return typeof value === 'string';
}

export function isDictionary(value: PdfValue): value is PdfDictionary {
  return value instanceof Map;
}

export function isReference(value: PdfValue): value is PdfReference {
  return typeof value === 'object' && value !== null && 'object' in value;
}

export function isString(value: PdfValue): value is PdfString {
  return typeof value === 'object' && value !== null && 'bytes' in value;
}

export function isArray(value: PdfValue): value is readonly PdfValue[] {
  return Array.isArray(value);
}

/** Thrown when the text is not what the standard or this reader knows. */
export class PdfSyntaxError extends Error {
  override readonly name = 'PdfSyntaxError';
}

/** Reads the value that begins at `start`, white space and comments before it passed over; `end` is where it stops. */
export function parsePdfValue(text: string, start: number): {readonly value: PdfValue; readonly end: number} {
  const reader = new ValueReader(text, start);
  const value = reader.read();
  return {value, end: reader.at};
}

/** A string as text: UTF-16 with a byte order mark, else the letters that PDFDocEncoding shares with Latin-1. */
export function decodePdfText({bytes}: PdfString): string {
  if (!bytes.startsWith('\xfe\xff')) return bytes;
  return Buffer.from(bytes.slice(2), 'latin1').swap16().toString('utf16le');
}

/** Text as a string of a PDF, in ASCII where it is ASCII and in UTF-16 otherwise. */
export function encodePdfText(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return `(${text.replace(/[\\()]/g, '\\$&')})`;
  return `<FEFF${Buffer.from(text, 'utf16le').swap16().toString('hex').toUpperCase()}>`;
}

/** A value as text of a PDF, the inverse of `parsePdfValue`. */
export function writePdfValue(value: PdfValue): string {
  if (isArray(value)) return `[${value.map(writePdfValue).join(' ')}]`;
  if (isDictionary(value)) {
    return `<<${[...value].map(([name, each]) => `${writeName(name)} ${writePdfValue(each)}`).join('\n')}>>`;
  }
  if (isReference(value)) return `${value.object} 0 R`;
  if (isString(value)) return `<${Buffer.from(value.bytes, 'latin1').toString('hex').toUpperCase()}>`;
  if (isName(value)) return writeName(value);
  return String(value);
}

function writeName(name: PdfName): string {
  const letters = name.slice(1).replace(/[^!-~]|[#()<>[\]{}/%]/g, (letter) => {
    return `#${letter.charCodeAt(0).toString(16).toUpperCase().padStart(2, '0')}`;
  });
  return `/${letters}`;
}

const space = /[\0\t\n\f\r ]/;
const number = /[+-]?(?:\d+\.?\d*|\.\d+)/y;
const reference = /(\d+)[\0\t\n\f\r ]+(\d+)[\0\t\n\f\r ]+R(?![^\0\t\n\f\r ()<>[\]{}/%])/y;
const regular = /[^\0\t\n\f\r ()<>[\]{}/%]*/y;
const escapes: Readonly<Record<string, string>> = {
  n: '\n',
  r: '\r',
  t: '\t',
  b: '\b',
  f: '\f',
  '\r': '',
  '\n': '',
};

class ValueReader {
  readonly #text: string;
  at: number;

  constructor(text: string, at: number) {
    this.#text = text;
    this.at = at;
  }

  read(): PdfValue {
    this.#skipSpace();
    const letter = this.#text[this.at] ?? '';
    if (letter === '/') return this.#readName();
    if (letter === '(') return {bytes: this.#readLiteral()};
    if (letter === '[') return this.#readArray();
    if (letter === '<')
      return this.#text[this.at + 1] === '<' ? this.#readDictionary() : {bytes: this.#readHex()};
    const object = this.#match(reference);
    if (object !== null) return {object: Number(object[1])};
    const digits = this.#match(number);
    if (digits !== null) return Number(digits[0]);
    const word = this.#match(regular)?.[0];
    if (word === 'true' || word === 'false') return word === 'true';
    if (word === 'null') return null;
    throw this.#fault(`\`${word}\` is no value`);
  }

  #match(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.at;
    const match = pattern.exec(this.#text);
    if (match !== null) this.at += match[0].length;
    return match;
  }

  #skipSpace(): void {
    for (;;) {
      const letter = this.#text[this.at] ?? '';
      if (letter === '%') {
        while (this.at < this.#text.length && !/[\r\n]/.test(this.#text[this.at] ?? '')) this.at++;
      } else if (space.test(letter)) this.at++;
      else return;
    }
  }

  /** Passes over `mark` when it comes next. */
  #take(mark: string): boolean {
    this.#skipSpace();
    if (!this.#text.startsWith(mark, this.at)) return false;
    this.at += mark.length;
    return true;
  }

  #readName(): PdfName {
    this.at++;
    const letters = this.#match(regular)?.[0] ?? '';
    return `/${letters.replace(/#([0-9a-f]{2})/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))}`;
  }

  #readArray(): PdfValue[] {
    this.at++;
    const values: PdfValue[] = [];
    while (!this.#take(']')) values.push(this.read());
    return values;
  }

  #readDictionary(): PdfDictionary {
    this.at += 2;
    const entries = new Map<PdfName, PdfValue>();
    while (!this.#take('>>')) {
      if (!this.#text.startsWith('/', this.at)) throw this.#fault('a key of a dictionary is no name');
      const key = this.#readName();
      entries.set(key, this.read());
    }
    return entries;
  }

  #readHex(): string {
    const end = this.#text.indexOf('>', this.at);
    if (end < 0) throw this.#fault('a string has no end');
    const digits = this.#text.slice(this.at + 1, end).replace(/[\0\t\n\f\r ]/g, '');
    this.at = end + 1;
    return Buffer.from(digits.length % 2 === 0 ? digits : `${digits}0`, 'hex').toString('latin1');
  }

  #readLiteral(): string {
    this.at++;
    let bytes = '';
    for (let depth = 1; ; ) {
      const letter = this.#text[this.at++];
      if (letter === undefined) throw this.#fault('a string has no end');
      if (letter === '\\') bytes += this.#readEscape();
      else {
        if (letter === '(') depth++;
        if (letter === ')' && --depth === 0) return bytes;
        bytes += letter;
      }
    }
  }

  #readEscape(): string {
    const octal = this.#match(/[0-7]{1,3}/y);
    if (octal !== null) return String.fromCharCode(Number.parseInt(octal[0], 8) & 0xff);
    if (this.#text.startsWith('\r\n', this.at)) this.at++;
    const letter = this.#text[this.at++] ?? '';
    return escapes[letter] ?? letter;
  }

  #fault(what: string): PdfSyntaxError {
    return new PdfSyntaxError(`${what} (byte ${this.at})`);
  }
}
