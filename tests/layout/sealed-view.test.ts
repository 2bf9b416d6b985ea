import {expect, test} from 'vitest';
import {createLayoutEngine} from '../../src/layout/layout-engine.ts';
import {UsageError} from '../../src/support/usage-error.ts';

const view = {title: 'A <b>', note: null, empty: [], items: [{id: 'S-01'}], part: {name: 'x'}};

function render(template: string, partials: Readonly<Record<string, string>> = {}): string {
  const files = Object.entries(partials).map(([name, text]): [string, string] => [
    `partials/${name}.hbs`,
    text,
  ]);
  return createLayoutEngine(new Map([['page.hbs', template], ...files]), 'en-GB').render('page.hbs', view);
}

test.each([
  ['{{title}}', 'A &lt;b&gt;'],
  ['{{#if note}}yes{{else}}no{{/if}}', 'no'],
  ['{{#each items}}{{id}}{{@index}}{{@last}}{{/each}}', 'S-010true'],
  ['{{#each empty}}x{{else}}none{{/each}}', 'none'],
  ['{{#each items}}{{../title}}{{/each}}', 'A &lt;b&gt;'],
  ['{{#with part}}{{name}}{{/with}}', 'x'],
  ['{{#if items}}{{items.length}}{{/if}}', '1'],
  ['{{longDate "2026-06-22"}}', '22 June 2026'],
])('%s prints %s', (template, html) => {
  expect(render(template)).toBe(html);
});

test.each([
  ['a value', '{{titel}}'],
  ['a condition', '{{#if titel}}x{{/if}}'],
  ['an `unless`', '{{#unless titel}}x{{/unless}}'],
  ['a loop', '{{#each itmes}}x{{/each}}'],
  ['a bare block', '{{#itmes}}x{{/itmes}}'],
  ['a path', '{{part.nmae}}'],
  ['a condition on a path', '{{#if part.nmae}}x{{/if}}'],
  ['a name within a loop', '{{#each items}}{{#if di}}x{{/if}}{{/each}}'],
  ['a name of the outer view within a loop', '{{#each items}}{{#if ../titel}}x{{/if}}{{/each}}'],
  ['the argument of a partial', '{{> line titel}}'],
  ['a condition within a partial', '{{> line}}'],
  ['the argument of a helper', '{{longDate dtae}}'],
  ['an unknown helper', '{{upperCase title}}'],
  ['an unknown partial', '{{> lien}}'],
  ['the log helper', '{{log title}}'],
  ['a prototype', '{{constructor}}'],
  ['a prototype by its other name', '{{#if __proto__}}x{{/if}}'],
  ['a method of lists', '{{#if items.map}}x{{/if}}'],
  ['broken syntax', '{{#if title}}x'],
])('a slip in %s stops the build and names the file', (_, template) => {
  const failing = () => render(template, {line: '{{#if nothing}}x{{/if}}'});
  expect(failing).toThrow(UsageError);
  expect(failing).toThrow('the layout file `page.hbs` cannot be used: ');
});

test('a partial that is used says what name it lacked and which there are', () => {
  expect(() => render('{{#each items}}{{#if titel}}x{{/if}}{{/each}}')).toThrow(
    'a template asks for `titel`, but the view has only: id',
  );
});
