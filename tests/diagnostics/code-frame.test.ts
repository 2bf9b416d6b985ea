import {expect, test} from 'vitest';
import {codeFrame} from '../../src/diagnostics/code-frame.ts';

const at = (line: number, column: number, endLine = line, endColumn = column) => ({
  line,
  column,
  endLine,
  endColumn,
});

test('the frame shows the line with its number and marks the part meant', () => {
  expect(codeFrame('title: Ribs\nneedles: 4.6 mm\n', at(2, 10, 2, 16))).toBe(
    ['2 | needles: 4.6 mm', '  |          ^^^^^^'].join('\n'),
  );
});

test('a place over several lines is marked to the end of its first line', () => {
  expect(codeFrame('ab cd\nef\n', at(1, 4, 2, 2))).toBe(['1 | ab cd', '  |    ^^'].join('\n'));
});

test('an empty place still gets one caret', () => {
  expect(codeFrame('', at(1, 1))).toBe(['1 |', '  | ^'].join('\n'));
});

test.each([
  ['CRLF', 'one\r\ntwo\r\n'],
  ['a lone carriage return', 'one\rtwo'],
  ['a byte order mark', '\uFEFFone\ntwo'],
])('lines are counted the same with %s', (_, text) => {
  expect(codeFrame(text, at(2, 1, 2, 4))).toBe(['2 | two', '  | ^^^'].join('\n'));
});

test('a long line is cut around the place', () => {
  const [line, carets] = codeFrame(`${'x'.repeat(500)}here${'y'.repeat(500)}`, at(1, 501, 1, 505)).split(
    '\n',
  );
  expect(line).toContain('here');
  expect(line?.length).toBeLessThan(110);
  expect(carets?.indexOf('^')).toBe(line?.indexOf('here'));
  expect(carets?.match(/\^+/)?.[0]).toBe('^^^^');
});

test('a terminal control in the text is shown, not obeyed, and the carets still stand under the place', () => {
  const [line, carets] = codeFrame('a\u001b[31m bad', at(1, 8, 1, 11)).split('\n');
  expect(line).toBe('1 | a\\u{1b}[31m bad');
  expect(carets?.indexOf('^')).toBe(line?.indexOf('bad'));
});

test('a line that does not exist gives no frame', () => {
  expect(codeFrame('one', at(9, 1))).toBe('');
});
