import {expect, test} from 'vitest';
import {isStubText, stubTexts} from '../../src/model/stub-text.ts';

test.each([...stubTexts, '', '  ', ' … ', 'todo', '\n?\n'])('%j says nothing yet', (text) => {
  expect(isStubText(text)).toBe(true);
});

test.each(['none', '… and so on', 'TODO list', '??', '-', '0'])('%j says something', (text) => {
  expect(isStubText(text)).toBe(false);
});
