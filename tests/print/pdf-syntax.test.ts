import fc from 'fast-check';
import {describe, expect, test} from 'vitest';
import {
  decodePdfText,
  encodePdfText,
  isString,
  type PdfName,
  PdfSyntaxError,
  type PdfValue,
  parsePdfValue,
  writePdfValue,
} from '../../src/print/pdf-syntax.ts';

const read = (text: string) => parsePdfValue(text, 0).value;

describe('the examples of ISO 32000-1:2008', () => {
  test.each<[string, string, PdfValue]>([
    ['7.3.2', 'true', true],
    ['7.3.3', '123', 123],
    ['7.3.3', '+17', 17],
    ['7.3.3', '-98', -98],
    ['7.3.3', '34.5', 34.5],
    ['7.3.3', '-3.62', -3.62],
    ['7.3.3', '4.', 4],
    ['7.3.3', '-.002', -0.002],
    ['7.3.4.2', '(This is a string)', {bytes: 'This is a string'}],
    [
      '7.3.4.2',
      '(Strings may contain balanced parentheses ( ) and\nspecial characters ( * ! & } ^ % and so on ) .)',
      {
        bytes:
          'Strings may contain balanced parentheses ( ) and\nspecial characters ( * ! & } ^ % and so on ) .',
      },
    ],
    ['7.3.4.2', '()', {bytes: ''}],
    ['7.3.4.2', '(These \\\ntwo strings \\\nare the same.)', {bytes: 'These two strings are the same.'}],
    [
      '7.3.4.2',
      '(This string contains \\245two octal characters\\307.)',
      {bytes: 'This string contains \xa5two octal characters\xc7.'},
    ],
    ['7.3.4.2', '(\\0053)', {bytes: '\x053'}],
    ['7.3.4.2', '(\\53)', {bytes: '+'}],
    ['7.3.4.2', '(\\n\\r\\t\\b\\f\\(\\)\\\\\\q)', {bytes: '\n\r\t\b\f()\\q'}],
    ['7.3.4.3', '<4E6F762073686D6F7A206B6120706F702E>', {bytes: 'Nov shmoz ka pop.'}],
    ['7.3.4.3', '<901FA>', {bytes: '\x90\x1f\xa0'}],
    ['7.3.5', '/Name1', '/Name1'],
    ['7.3.5', '/A;Name_With-Various***Characters?', '/A;Name_With-Various***Characters?'],
    ['7.3.5', '/1.2', '/1.2'],
    ['7.3.5', '/.notdef', '/.notdef'],
    ['7.3.5', '/Lime#20Green', '/Lime Green'],
    ['7.3.5', '/paired#28#29parentheses', '/paired()parentheses'],
    ['7.3.5', '/The_Key_of_F#23_Minor', '/The_Key_of_F#_Minor'],
    ['7.3.6', '[549 3.14 false (Ralph) /SomeName]', [549, 3.14, false, {bytes: 'Ralph'}, '/SomeName']],
    ['7.3.9', 'null', null],
    ['7.3.10', '12 0 R', {object: 12}],
    ['7.3.10', '[12 0 R 12 0 3]', [{object: 12}, 12, 0, 3]],
  ])('%s: %s', (_, text, value) => expect(read(text)).toEqual(value));

  test('7.3.7: a dictionary, with a comment', () => {
    const text =
      '<< /Type /Example % what it is\n/Version 0.01 /Subdictionary << /Item1 0.4 /LastItem (not !) >>>>';
    expect(read(text)).toEqual(
      new Map<string, unknown>([
        ['/Type', '/Example'],
        ['/Version', 0.01],
        [
          '/Subdictionary',
          new Map<string, unknown>([
            ['/Item1', 0.4],
            ['/LastItem', {bytes: 'not !'}],
          ]),
        ],
      ]),
    );
  });
});

test.each(['', 'wool', '(no end', '<41', '[1 2', '<< /A 1', '<< 1 2 >>', ']'])(
  '%j is no value, and that is told',
  (text) => {
    expect(() => read(text)).toThrow(PdfSyntaxError);
  },
);

const anyName = fc
  .string({unit: 'binary-ascii', minLength: 1})
  .map((letters): PdfName => `/${letters.replaceAll('\0', '')}`);
const {anyValue} = fc.letrec<{anyValue: PdfValue}>((tie) => ({
  anyValue: fc.oneof(
    {maxDepth: 4},
    fc.integer(),
    fc.boolean(),
    fc.constant(null),
    anyName,
    fc.uint8Array().map((bytes) => ({bytes: Buffer.from(bytes).toString('latin1')})),
    fc.nat().map((object) => ({object})),
    fc.array(tie('anyValue'), {maxLength: 4}),
    fc.array(fc.tuple(anyName, tie('anyValue')), {maxLength: 4}).map((entries) => new Map(entries)),
  ),
}));

test('reading what was written gives the value back, whatever it is', () => {
  fc.assert(
    fc.property(anyValue, (value) => {
      expect(read(writePdfValue(value))).toEqual(value);
    }),
  );
});

test('text that goes into a file comes out again, whatever its letters', () => {
  fc.assert(
    fc.property(fc.string({unit: 'binary'}), (text) => {
      const value = read(encodePdfText(text));
      expect(isString(value) && decodePdfText(value)).toBe(text);
    }),
  );
});

test('reading never hangs and fails in one way only, whatever the bytes', () => {
  fc.assert(
    fc.property(fc.string({unit: 'binary-ascii'}), (text) => {
      try {
        read(text);
      } catch (error) {
        expect(error).toBeInstanceOf(PdfSyntaxError);
      }
    }),
  );
});
