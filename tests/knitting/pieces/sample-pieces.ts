import {Fraction} from '../../../src/knitting/fraction.ts';
import {readPiece} from '../../../src/knitting/pieces/read-piece.ts';
import {workPiece} from '../../../src/knitting/pieces/work-piece.ts';
import {perMillimetre} from '../../../src/knitting/units.ts';

/** 22 stitches and 30 rows over 10 cm. */
export const gauges = {
  stitches: perMillimetre<'stitches'>(Fraction.ofRatio(22, 100)),
  rows: perMillimetre<'rows'>(Fraction.ofRatio(30, 100)),
};

const body = `cast on 114
work 20 rows
work 90 rows
mark the underarm`;

export const samplePieces = {
  'vest back': `${body}
bind off 8 at the beginning of the next 2 rows
bind off 3 at the beginning of the next 2 rows
decrease 1 at each edge every other row 8 times
work 52 rows
mark the shoulder
bind off in steps 7, 7, 6 at each edge
put 36 on a holder`,
  'vest front': `${body}
divide: 56 left, 2 on a holder, 56 right
each side:
at the armhole edge: bind off 8; bind off 3; decrease 1 every other row 8 times; work 52 rows
at the neck edge: decrease 1 every 4th row 17 times; work 4 rows
mark the shoulder
bind off in steps 7, 7, 6 at the armhole edge`,
  sleeve: `cast on 56
work 20 rows
increase 1 at each edge every 6th row 15 times
work 10 rows
mark the underarm
bind off 8 at the beginning of the next 2 rows
bind off 3 at the beginning of the next 2 rows
decrease 1 at each edge every other row 25 times
bind off 3 at the beginning of the next 2 rows
bind off 8`,
  hat: `in the round
cast on 96
work 14 rounds
work 22 rounds
decrease 8 evenly on the next and every other round 11 times
draw up 8`,
  mitten: `in the round
cast on 40
work 16 rounds
increase 2 evenly every 3rd round 6 times
put 12 on a holder
work 24 rounds
decrease 2 at each edge every other round 3 times
decrease 2 at each edge every round 5 times
draw up 8`,
  sock: `in the round
cast on 64
work 60 rounds
put 32 on a holder
back and forth
work 32 rows
decrease 1 at each edge every row 7 times
pick up 32
in the round
take up 32 from the holder
decrease 1 at each edge every other round 9 times
work 40 rounds
decrease 2 at each edge every other round 8 times
decrease 2 at each edge every round 4 times
graft 16`,
  'shoulder in short rows': `cast on 60
work 10 rows
short rows in steps 7, 7, 6 at each edge
bind off`,
  'one side after the other': `cast on 40
work 2 rows
divide: 20 left, 20 right
left side:
decrease 1 at the neck edge every other row 5 times
bind off 15
right side:
work 10 rows
bind off 20`,
} as const;

export type SamplePiece = keyof typeof samplePieces;

/** Reads and works a block at the gauge above. */
export function work(text: string) {
  const {piece, problems} = readPiece(text);
  const worked = workPiece(piece, gauges.rows);
  return {piece, worked, problems: [...problems, ...worked.problems]};
}
