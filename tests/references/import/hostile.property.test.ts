import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {appendToLibrary, readLibraryFile} from '../../../src/commands/library-file.ts';
import type {ImportFormat} from '../../../src/references/import/csl-record.ts';
import {isCitationKey} from '../../../src/references/import/make-key.ts';
import {importText} from './import-text.ts';

const formats: readonly ImportFormat[] = ['bib', 'ris', 'csl-json'];
const pieces = [
  ...[
    '@book{k,',
    '@string{a =',
    '@comment{',
    '\n@misc{,',
    'title = ',
    'author={',
    'year',
    'month',
    'date={',
    'url={',
  ],
  ...[
    '{',
    '}',
    '"',
    '#',
    ',',
    '=',
    '(',
    ')',
    '%',
    '$',
    '\\',
    '\\"',
    '\\emph',
    '\\begin{',
    '\\constructor',
    '~',
    '^',
  ],
  ...[
    'TY  - BOOK',
    'TY  - JOUR',
    'ER  - ',
    'AU  - ',
    'TI  - ',
    'PY  - ',
    'ID  - ',
    'DO  - ',
    'SP  - ',
    '  - ',
  ],
  ...[
    '[',
    ']',
    '{"id":',
    '"title":',
    '"author":[',
    '"issued":{"date-parts":[[',
    '"__proto__":',
    'null',
    '1e999',
    ':',
  ],
  ...[
    '<script>',
    'javascript:alert(1)',
    '__proto__',
    'constructor',
    ' and ',
    'van der Berg',
    '2011',
    '-',
    'ß',
    'אב',
  ],
  ...[
    '\u202e',
    '\u0000',
    '\ud800',
    '\ufeff',
    '\u2028',
    '\r\n',
    '\n',
    '\n\n',
    ' ',
    '\t',
    '…',
    '?',
    '# x',
    '- ',
    ': ',
  ],
];
const noise = fc.array(fc.oneof(fc.constantFrom(...pieces), fc.string({unit: 'binary', maxLength: 8})), {
  maxLength: 60,
});

describe.each(formats)('%s', (format) => {
  test('no text makes it throw; every place lies in the text, every key can be cited, and the library reads all that is written', async () => {
    let read = 0;
    await fc.assert(
      fc.asyncProperty(noise, fc.boolean(), async (parts, isTitle) => {
        const text = isTitle ? titled(parts.join(''))[format] : parts.join('');
        const {sources, problems} = await importText(text, format);
        const lines = text.split('\n').length;
        for (const {line, message} of problems) {
          expect(line).toBeLessThanOrEqual(lines);
          expect(message).not.toBe('');
        }
        expect(sources.every(({id}) => isCitationKey(id))).toBe(true);
        expect(new Set(sources.map(({id}) => id)).size).toBe(sources.length);
        if (sources.length === 0) return;
        read++;
        const {whole} = appendToLibrary(null, sources, 'From a test');
        expect(readLibraryFile(Buffer.from(whole ?? []).toString('utf8')).sources).toEqual(sources);
      }),
      {numRuns: 400},
    );
    expect(read).toBeGreaterThan(50);
  });
});

const titled = (title: string): Readonly<Record<ImportFormat, string>> => ({
  bib: `@book{k, title = {${title}}}`,
  ris: `TY  - BOOK\nTI  - ${title}\nER  - \n`,
  'csl-json': JSON.stringify([{id: 'k', type: 'book', title}]),
});

test('any word is a title in every format and comes into the library and out of it as it is', async () => {
  const word = fc
    .string({unit: 'grapheme', minLength: 1, maxLength: 20})
    .filter((text) => /^[\p{L}\p{N}]+$/u.test(text));
  await fc.assert(
    fc.asyncProperty(word, fc.constantFrom(...formats), async (title, format) => {
      const {sources} = await importText(titled(title)[format], format);
      expect(sources.map((source) => source.title)).toEqual([title.normalize('NFC')]);
      const {whole} = appendToLibrary(null, sources, 'From a test');
      expect(readLibraryFile(Buffer.from(whole ?? []).toString('utf8')).sources).toEqual(sources);
    }),
    {numRuns: 200},
  );
});

// Two million characters of what makes a reader with a stack or a slow pattern fall over; ten seconds are far more than a
// machine needs that does each of them in time in proportion to its length.
const much = (piece: string) => piece.repeat(Math.floor(1_900_000 / piece.length));
test.each<[string, ImportFormat, string]>([
  ['open braces', 'bib', `@book{a, title={${much('{')}`],
  ['nested braces', 'bib', `@book{a, title={${'{'.repeat(9e5)}${'}'.repeat(9e5)}}}`],
  ['entries that are not closed', 'bib', much('@book{a, title={x\n')],
  ['names', 'bib', `@book{a, author={${much('A and ')}B}}`],
  ['words of one name', 'bib', `@book{a, author={${much('a ')}B}}`],
  ['formulas', 'bib', `@book{a, title={${much('$x')}}}`],
  ['remarks', 'bib', `@book{a,${much('%\n')}}`],
  [
    'strings made of strings',
    'bib',
    `@string{a="xxxxxxxx"}${'@string{a=a # a # a}'.repeat(60)}@book{z, title=a}`,
  ],
  ['authors', 'ris', `TY  - BOOK\n${much('AU  - A, B\n')}`],
  ['lines', 'ris', `TY  - BOOK\n${much('x\n')}`],
  ['brackets', 'csl-json', much('[')],
  ['backslashes', 'csl-json', `["${much('\\\\')}"]`],
])('a file full of %s is read in time', {timeout: 10_000}, async (_, format, text) => {
  const {sources} = await importText(text, format);
  expect(JSON.stringify(sources).length).toBeLessThan(50_000);
});
