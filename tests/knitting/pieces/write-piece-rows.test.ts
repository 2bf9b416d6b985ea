import {expect, test} from 'vitest';
import {writePieceRows} from '../../../src/knitting/pieces/write-piece-rows.ts';
import {type SamplePiece, samplePieces, work} from './sample-pieces.ts';

function written(name: SamplePiece) {
  return writePieceRows(work(samplePieces[name]).worked);
}

test('short rows turn before all the stitches left waiting, 7, then 14, then 20 at each end', () => {
  const [block] = written('shoulder in short rows');
  const left = [...(block?.text ?? '').matchAll(/to last (\d+) sts, turn/g)].map(([, count]) =>
    Number(count),
  );
  expect(left).toEqual([7, 7, 14, 14, 20, 20]);
  expect(block?.ending).toBe('Bind off the last 60 stitches.');
});

test('a group of rows that comes again is written once, with the count at its end', () => {
  expect(written('vest back')[0]?.text.split('\n').slice(8, 11)).toEqual([
    'Row 115 (RS): K1, ssk, k to last 3 sts, k2tog, k1. 90 sts.',
    'Row 116 (WS): Purl.',
    'Rows 117–130: rep rows 115–116. 76 sts.',
  ]);
});

test('each part above a divide, and each stretch behind a holder, is a block of its own', () => {
  expect(written('vest front').map(({title}) => title)).toEqual([null, 'left', 'right']);
  expect(written('mitten').map(({text}) => text.split('\n')[0])).toEqual(['cast on: 40', 'stitches: 40']);
  expect(written('sock').map(({ending}) => ending)).toEqual([
    null,
    null,
    'Graft the last 16 stitches, half of them to the other half.',
  ]);
});
