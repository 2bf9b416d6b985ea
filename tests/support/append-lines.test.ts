import fc from 'fast-check';
import {expect, test} from 'vitest';
import {appendLines} from '../../src/support/append-lines.ts';

test.each([
  [null, 'a\nb\n'],
  ['', 'a\nb\n'],
  ['x\n', 'x\na\nb\n'],
  ['x', 'x\na\nb\n'],
  ['x\r\ny', 'x\r\ny\r\na\r\nb\r\n'],
  ['\uFEFF', '\uFEFFa\nb\n'],
])('after %j', (before, whole) => {
  const bytes = before === null ? null : Buffer.from(before);
  expect(Buffer.from(appendLines(bytes, ['a', 'b'])).toString('utf8')).toBe(whole);
});

test('every byte that stood there stays, be it text or not', () => {
  fc.assert(
    fc.property(fc.uint8Array(), (before) => {
      expect([...appendLines(before, ['a'])].slice(0, before.length)).toEqual([...before]);
    }),
  );
});
