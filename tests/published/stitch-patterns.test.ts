import {readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import {type ProvedPattern, proveRows} from '../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../src/knitting/rows/read-rows.ts';

// data/stitch-patterns.json: 24 published patterns, each naming its source, with the stitches of every row worked out
// by hand. The printed text is read; where the file holds no complete instruction (an excerpt that stops, an editor's
// remark, a reconstruction) the row is read from the file's lead, repeat and tail, and listed here with the reason.
const notPrinted: Readonly<Record<string, string>> = {
  'old-shale-18 2': 'an editor’s remark stands in it',
  'old-shale-18 4': 'an editor’s remark stands in it',
  'old-shale-17-variant 1': 'reconstructed by the editor',
  'six-stitch-lace-1843 2': 'the repeat is not in the excerpt',
  'six-stitch-lace-1843 4': 'the repeat is not in the excerpt',
  'cable-III-1847 1': 'the last repeat is said in a later sentence to be cut by two stitches',
  'leaf-half-square-shawl-1846-emended 1': 'emended by the editor',
  'cable-knitting-6-1843 1-7': 'a summary of seven rows',
  'purse-pretty-stitch-1843 2': 'a later sentence changes the first and the last stitch',
  'purse-pretty-stitch-1843 3': 'told as a description of the whole row',
  'mosaic-1847 4': 'the ending is not in the excerpt',
  'saddle-cable-31 4, 12': '“same” stands for a step',
  'saddle-cable-31 8, 16': '“as row 4” stands for a step',
};

/** Where a pattern is not sound: the row at which it must be refused. */
const refusedAt: Readonly<Record<string, number>> = {
  'weldon-knitted-lace-13+2-x2': 27,
  'leaf-half-square-shawl-1846-as-printed': 3,
};

interface PublishedRow {
  readonly row: number | string;
  readonly text: string;
  readonly lead: string;
  readonly repeat: string;
  readonly tail: string;
  readonly sts_before: number;
  readonly consumes: number;
  readonly produces: number;
  readonly leftover: number;
  readonly sts_after: number;
}

interface PublishedPattern {
  readonly id: string;
  readonly example_cast_on: number;
  readonly rows: readonly PublishedRow[];
}

// The shape is that of the file itself.
const {patterns} = JSON.parse(
  readFileSync(new URL('data/stitch-patterns.json', import.meta.url), 'utf8'),
) as {readonly patterns: readonly PublishedPattern[]};

describe('the published stitch patterns', () => {
  it.each(patterns.map((pattern) => [pattern.id, pattern] as const))(
    '%s has the counts worked out by hand',
    (id, pattern) => {
      const {pattern: written, problems} = readRows(blockOf(pattern));
      expect(problems).toEqual([]);
      const proved = proveRows(written);
      for (const row of pattern.rows) {
        const numbers = numbersOf(row.row);
        expect.soft(countsOf(proved, numbers), `${id}, row ${row.row}`).toEqual({
          in: row.sts_before,
          used: row.consumes,
          made: row.produces,
          leftOver: row.leftover,
        });
      }
      const refused = refusedAt[id];
      expect(proved.problems.map(({message}) => /Row \d+/.exec(message)?.[0])).toEqual(
        refused === undefined ? [] : [`Row ${refused}`],
      );
    },
  );

  it('are read as printed, all but the rows listed', () => {
    const rows = patterns.flatMap(({id, rows: all}) => all.map(({row}) => `${id} ${row}`));
    expect(rows.filter((row) => row in notPrinted)).toEqual(Object.keys(notPrinted));
    expect(rows.length - Object.keys(notPrinted).length).toBe(110);
    expect(Object.keys(notPrinted)).toHaveLength(13);
  });
});

function blockOf({id, example_cast_on: start, rows}: PublishedPattern): string {
  const lines = rows.map(
    (row) => `${labelOf(row.row)}: ${`${id} ${row.row}` in notPrinted ? normalised(row) : row.text}`,
  );
  return [`stitches: ${start}`, ...lines].join('\n');
}

function labelOf(row: number | string): string {
  if (typeof row === 'string' && row.startsWith('every')) return 'Every row';
  return `Row${/^\d+$/.test(`${row}`) ? '' : 's'} ${row}`;
}

function normalised({lead, repeat, tail}: PublishedRow): string {
  const parts = [lead, repeat && `*${repeat}; rep from *`, tail].filter((part) => part !== '');
  return parts.join(', ').replaceAll('RT2', 'RT').replaceAll('k3togtbl', 'k3tog tbl');
}

function numbersOf(row: number | string): number[] {
  const text = `${row}`;
  const range = /^(\d+)-(\d+)$/.exec(text);
  if (range) {
    const [first, last] = [Number(range[1]), Number(range[2])];
    return Array.from({length: last - first + 1}, (_, index) => first + index);
  }
  const numbers = (text.match(/\d+/g) ?? ['1']).map(Number);
  return numbers;
}

/** Of the last of the rows that one line of the file stands for; all of them must keep the same count. */
function countsOf({sizes}: ProvedPattern, numbers: readonly number[]) {
  const rows = numbers.map((number) => sizes[0]?.rows.find((row) => row.number === number));
  const last = rows.at(-1);
  const first = rows[0];
  if (!first || !last) return `row ${numbers.join(', ')} was not proved`;
  return {in: first.in, used: last.used, made: last.made, leftOver: last.in - last.used - last.unworked};
}
