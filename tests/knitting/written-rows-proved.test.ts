import {expect, test} from 'vitest';
import {proveRows} from '../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../src/knitting/rows/read-rows.ts';
import {type Ends, spreadEvenly} from '../../src/knitting/spread-evenly.ts';
import {spreadInRib} from '../../src/knitting/spread-in-rib.ts';
import {type SpreadKind, spreadWork, writeSpread} from '../../src/knitting/spread-work.ts';
import {stitches} from '../../src/knitting/units.ts';

function problemsOf(head: string, rows: readonly string[]): readonly string[] {
  const {pattern, problems} = readRows([head, ...rows].join('\n'));
  return [...problems, ...proveRows(pattern).problems].map(({message}) => message);
}

test.each<[SpreadKind, number, number, Ends | null, number]>([
  ['decreases', 100, 16, 'whole', 0],
  ['decreases', 55, 17, null, 0],
  ['bar increases', 48, 5, 'half', 0],
  ['raised increases', 80, 6, null, 0],
  ['yarn overs', 41, 7, 'half', 0],
  ['buttonholes', 100, 7, 3, 4],
  ['markers', 96, 4, null, 0],
])(
  '%s over %d stitches, %d times: the reader of written rows proves them',
  (kind, over, places, ends, width) => {
    const work = spreadWork(kind, width);
    const spread = spreadEvenly({
      stitches: stitches(over),
      places,
      work,
      ends,
      needsNeighbours: work.needsNeighbours,
    });
    if (!spread.ok) throw new Error('it can be spread');
    const head = `cast on: ${over}${ends === null ? '\nin the round' : ''}`;
    expect(problemsOf(head, writeSpread(spread.value, kind, width, ends === null))).toEqual([]);
  },
);

test('buttonholes in rib: the reader of written rows proves them', () => {
  const spread = spreadInRib({stitches: stitches(94), rib: {knit: 2, purl: 2}, buttonholes: 5, width: 2});
  if (!spread.ok) throw new Error('it can be spread');
  expect(problemsOf('cast on: 94', [spread.value.boundOff, spread.value.castOn])).toEqual([]);
});
