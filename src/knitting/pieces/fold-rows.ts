import {plural} from '../../support/plural.ts';

/** One row in words, without its label, and the count it leaves. */
export interface RowWords {
  readonly words: string;
  readonly isRight: boolean;
  readonly after: number;
  readonly isChanged: boolean;
}

/** Groups longer than this are not looked for. */
const longestGroup = 16;

/**
 * Rows with their labels; a group that comes again at once is written once, and the rows that repeat it as `rep rows 3
 * and 4`, with the count at their end. Flat groups hold an even number of rows, so that sides stay the same.
 */
export function foldRows(rows: readonly RowWords[], isRound: boolean): readonly string[] {
  const lines: string[] = [];
  const label = isRound ? 'Rnd' : 'Row';
  for (let at = 0; at < rows.length; ) {
    const {length, copies} = bestGroup(rows, at, isRound);
    const end = at + length * copies;
    const shown = rows.slice(at, at + length);
    lines.push(...shown.map((row, index) => lineOf(row, at + index + 1, label, isRound)));
    if (copies > 1) {
      const from = at + length + 1;
      const last = rows[end - 1];
      const isChanged = shown.some((row) => row.isChanged);
      const range = from === end ? `${label} ${from}` : `${label}s ${from}–${end}`;
      const group =
        length === 1
          ? `${label.toLowerCase()} ${at + 1}`
          : `${label.toLowerCase()}s ${at + 1}–${at + length}`;
      lines.push(`${range}: rep ${group}.${isChanged && last ? ` ${counted(last)}` : ''}`);
    }
    at = end;
  }
  return lines;
}

function lineOf(row: RowWords, number: number, label: string, isRound: boolean): string {
  const {words, isRight, isChanged} = row;
  const side = isRound ? '' : ` (${isRight ? 'RS' : 'WS'})`;
  return `${label} ${number}${side}: ${words}.${isChanged ? ` ${counted(row)}` : ''}`;
}

function counted({after}: RowWords): string {
  return `${plural(after, 'st')}.`;
}

/** The group at `at` that covers most rows when worked again and again; the shortest of them. */
function bestGroup(
  rows: readonly RowWords[],
  at: number,
  isRound: boolean,
): {readonly length: number; readonly copies: number} {
  let best = {length: 1, copies: 1};
  for (let length = isRound ? 1 : 2; length <= longestGroup; length += isRound ? 1 : 2) {
    let end = at + length;
    while (end < rows.length && rows[end]?.words === rows[end - length]?.words) end += 1;
    const copies = Math.floor((Math.min(end, rows.length) - at) / length);
    if (copies > 1 && length * copies > best.length * best.copies) best = {length, copies};
  }
  return best;
}
