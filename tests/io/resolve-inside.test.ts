import nodePath from 'node:path';
import {expect, test} from 'vitest';
import {resolveInside} from '../../src/io/resolve-inside.ts';
import {OutsideFolderError} from '../../src/io/workspace.ts';

test.each([
  '..\\secret.md',
  'content\\a.md',
  'content/..\\..\\secret.md',
  'C:\\secret.md',
  'C:secret.md',
  'D:/secret.md',
  '\\\\host\\share\\secret.md',
  '//host/share/secret.md',
  '/secret.md',
  'NUL',
  'content/aux.md',
  'com1/a.md',
])('on Windows %j leaves the folder', (path) => {
  expect(() => resolveInside('C:\\Users\\Marit\\binder', path, nodePath.win32)).toThrow(OutsideFolderError);
});

test.each(['content/a.md', 'content/console.md', 'content/front #1, grün & 50%.jpg', 'a'])(
  'on Windows %j lies inside',
  (path) => {
    expect(resolveInside('C:\\Users\\Marit\\binder', path, nodePath.win32)).toBe(
      `C:\\Users\\Marit\\binder\\${path.replaceAll('/', '\\')}`,
    );
  },
);
