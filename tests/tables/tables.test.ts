import {existsSync, readFileSync} from 'node:fs';
import {join} from 'node:path';
import {describe, expect, test} from 'vitest';
import {parse} from 'yaml';
import {z} from 'zod';
import {itemsById} from '../../src/model/binder.ts';
import {kinds} from '../../src/model/kinds.ts';
import {lookUpTable, tables} from '../../src/tables/index.ts';
import {casesIn} from '../support/cases.ts';
import {expectFolder} from '../support/expect-folder.ts';
import {sampleBinder} from '../support/sample-binder.ts';
import {showHtml} from '../support/show-html.ts';

/** What a case's `input.yaml` holds: the front matter of items, and the first item asks for the table. */
const inputSchema = z.strictObject({
  units: z.enum(['metric', 'inch']).optional(),
  attributes: z.record(z.string(), z.string()).default({}),
  items: z.array(z.looseObject({kind: z.enum(kinds), requirement: z.string()})).min(1),
});

const cases = casesIn('tests/tables');

describe('computed tables', () => {
  test.each(cases)('$name', ({name, folder, expected}) => {
    const [table = ''] = name.split('/');
    const {
      units = 'metric',
      attributes,
      items,
    } = inputSchema.parse(parse(readFileSync(join(folder, 'input.yaml'), 'utf8')));
    const binder = sampleBinder({units, items});
    const item = itemsById(binder).get(items[0]?.requirement ?? '');
    const result = item && lookUpTable(binder, item)(table, attributes);
    const produced: Record<string, string> = {};
    if (result && result.content.length > 0) produced['table.html'] = showHtml(result.content);
    if (result && result.problems.length > 0) {
      produced['problems.txt'] = result.problems.map(({message, hint}) => `${message}\n  ${hint}\n`).join('');
    }
    expectFolder(expected, produced);
  });

  test('every table has a case that shows it and a case that says why it cannot', () => {
    for (const {id} of tables) {
      const files = cases
        .filter(({name}) => name.startsWith(`${id}/`))
        .flatMap(({expected}) =>
          ['table.html', 'problems.txt'].filter((file) => existsSync(join(expected, file))),
        );
      expect(new Set(files), id).toEqual(new Set(['table.html', 'problems.txt']));
    }
  });
});

test('a name that is no table gives null', () => {
  const binder = sampleBinder({items: [{kind: 'swatch', requirement: 'S-01'}]});
  const [item] = binder.items;
  expect(item && lookUpTable(binder, item)('guage', {})).toBeNull();
});
