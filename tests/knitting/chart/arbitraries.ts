import fc from 'fast-check';

interface Piece {
  readonly text: string;
  readonly uses: number;
  readonly makes: number;
}

const piece = (text: string, uses: number, makes: number): Piece => ({text, uses, makes});

/** Uses and makes as in the published abbreviation lists. */
const rightSide = [
  piece('k1', 1, 1),
  piece('p1', 1, 1),
  piece('k1 tbl', 1, 1),
  piece('sl1', 1, 1),
  piece('yo', 0, 1),
  piece('M1L', 0, 1),
  piece('M1R', 0, 1),
  piece('k2tog', 2, 1),
  piece('ssk', 2, 1),
  piece('skp', 2, 1),
  piece('s2kp', 3, 1),
  piece('k3tog', 3, 1),
  piece('kfb', 1, 2),
  piece('2/2 LC', 4, 4),
  piece('2/1 RPC', 3, 3),
  piece('RT', 2, 2),
];
const wrongSide = [
  piece('p1', 1, 1),
  piece('k1', 1, 1),
  piece('p1 tbl', 1, 1),
  piece('sl1', 1, 1),
  piece('p2tog', 2, 1),
  piece('ssp', 2, 1),
  piece('M1P', 0, 1),
  piece('pfb', 1, 2),
];

/** Rows that come out, worked flat, with the count after each row. */
export const soundRows = fc
  .record({
    start: fc.integer({min: 4, max: 24}),
    choices: fc.array(fc.array(fc.nat(), {minLength: 1, maxLength: 40}), {minLength: 1, maxLength: 7}),
  })
  .map(({start, choices}) => {
    const lines = [`stitches: ${start}`];
    const counts: number[] = [];
    let left = start;
    choices.forEach((picks, index) => {
      const isRight = index % 2 === 0;
      const row = fillRow(left, picks, isRight ? rightSide : wrongSide);
      left = row.reduce((sum, {makes}) => sum + makes, 0);
      counts.push(left);
      lines.push(`Row ${index + 1} (${isRight ? 'RS' : 'WS'}): ${row.map(({text}) => text).join(', ')}.`);
    });
    return {text: `${lines.join('\n')}\n`, start, counts};
  });

function fillRow(count: number, picks: readonly number[], pieces: readonly Piece[]): Piece[] {
  const row: Piece[] = [];
  let left = count;
  for (const pick of picks) {
    const chosen = pieces[pick % pieces.length];
    if (!chosen || chosen.uses > left) continue;
    row.push(chosen);
    left -= chosen.uses;
  }
  for (; left > 0; left--) row.push(piece('k1', 1, 1));
  return row;
}

/** Anything that might stand in a chart block. */
export const chartLikeText = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        'X = colour chalk',
        '. = k (RS), p (WS)',
        '/ = k2tog',
        'c = 2/2 LC',
        'o = yo',
        '= = =',
        'in the round',
      ),
      fc.constantFrom(
        'method: intarsia',
        'rows per line: 2',
        'first row: WS',
        'stitches: 4',
        'multiple: 6 + 5',
        'x = BO 1',
      ),
      fc
        .array(fc.constantFrom('.', '/', 'c', '>', '_', '~', '|', 'o', 'X', '1', '12', 'zz', '='), {
          maxLength: 9,
        })
        .map((line) => line.join(' ')),
      fc.string({maxLength: 30}),
    ),
    {maxLength: 14},
  )
  .map((lines) => lines.join('\n'));
