/** What a page's content refers to by names, which differ from file to file. */
export interface NamedThings {
  /** What stands for the thing in every file; null for a name that the file does not explain. */
  describe(operator: string, name: string): string | null;
  /** How a string shown in the font `name` is described; null where the string says it itself. */
  glyphs(name: string): ((string: string) => string) | null;
}

/** What `q` saves and `Q` brings back. */
interface State {
  /** What is taken from every height, in its own units. */
  readonly shift: number;
  readonly glyphs: ((string: string) => string) | null;
}

/**
 * A page's content (ISO 32000-1, section 7.8.2) as it would be in every file that draws the same page, whatever pages
 * come before and after it:
 *
 * - A name is replaced by what it stands for: names are counted through the whole file.
 * - Chromium draws the body of a page in coordinates of the whole document and moves it up by the height of the pages
 *   before. Here the coordinates count from a steady height. It writes eight digits, so that what is lost in a long
 *   document is made good by rounding to 1/64 of a pixel, the unit in which it lays out. (One thing it writes in
 *   coordinates of the page, with what was lost on the way: an underline that leaves room for the letters below it. Such
 *   a page may pass for another when its place in the document changes; our layouts underline nothing.)
 * - Marks that only tie the content to the structure tree are left out: they draw nothing.
 */
export function steadyContent(content: string, things: NamedThings): string {
  let result = '';
  let state: State = {shift: 0, glyphs: null};
  const saved: State[] = [];
  let at = 0;
  for (const {0: text, index, groups = {}} of content.matchAll(token)) {
    result += content.slice(at, index);
    at = index + text.length;
    const {string, mark, name, size = '', numbers, stack} = groups;
    const operator = groups.operator ?? groups.drawing ?? '';
    if (mark !== undefined) continue;
    if (string !== undefined) result += state.glyphs?.(string) ?? string;
    else if (name !== undefined) {
      const described = things.describe(operator, name);
      if (operator === 'Tf') state = {...state, glyphs: things.glyphs(name)};
      result += described === null ? text : `${described}${size} ${operator}`;
    } else if (numbers !== undefined) {
      const steady = steadyNumbers(operator, numbers.trim().split(/\s+/).map(Number), state.shift);
      state = {...state, shift: steady.shift};
      result += `${steady.numbers.join(' ')} ${operator}`;
    } else {
      if (stack === 'q') saved.push(state);
      else state = saved.pop() ?? state;
      result += text;
    }
  }
  return result + content.slice(at);
}

/** The operands of an operator that stands where coordinates are shifted, and how they are shifted after it. */
function steadyNumbers(
  operator: string,
  operands: readonly number[],
  shift: number,
): {readonly numbers: readonly number[]; readonly shift: number} {
  const heights = heightsIn[operator] ?? [];
  const numbers = operands.map((value, place) =>
    heights.includes(place) && shift !== 0 ? round(value - shift, pixelPart) : value,
  );
  if (operator !== 'cm') return {numbers, shift};
  // A matrix that only scales and moves; the one of the whole page, which turns it over, is the same on each.
  const [, b, c, d = 0, , f = 0] = numbers;
  if (b !== 0 || c !== 0 || !(d > 0)) return {numbers, shift: 0};
  const units = Math.round(-f / d);
  return {numbers: numbers.with(5, round(f + units * d, matrixPart)), shift: units};
}

function round(value: number, step: number): number {
  return Math.round(value / step) * step;
}

/** What the coordinates are rounded to, and the rest of a matrix's movement, in their own units. */
const pixelPart = 1 / 64;
const matrixPart = 1 / 8;

/** Which operands of an operator are heights (ISO 32000-1, tables 57, 59 and 108). */
const heightsIn: Readonly<Record<string, readonly number[]>> = {
  cm: [5],
  Tm: [5],
  re: [1],
  m: [1],
  l: [1],
  c: [1, 3, 5],
  v: [1, 3],
  y: [1, 3],
};

/**
 * What is looked at, as Chromium writes it: a string, in which brackets are escaped; a mark of the structure; a name, a
 * font's size and the operator; numbers and the operator; the state saved and brought back. Pictures are never written out
 * within the text.
 */
const token = new RegExp(
  [
    String.raw`(?<string>\((?:\\[\s\S]|[^\\()])*\)|<[\da-fA-F\s]*>)`,
    String.raw`(?<mark>\/[^\s/<>()[\]]+\s*<<[^<>]*\/MCID[^<>]*>>\s*BDC\s?|\bEMC\b\s?)`,
    String.raw`\/(?<name>[^\s/<>()[\]]+)(?<size>(?:\s+[-+.\d]+)?)\s+(?<operator>Tf|gs|Do|sh|cs|CS|scn|SCN)\b`,
    String.raw`(?<numbers>(?<![-+.\d])(?:[-+.\d]+\s+){2,6})(?<drawing>cm|Tm|re|[mlcvy])\b`,
    String.raw`\b(?<stack>[qQ])\b`,
  ].join('|'),
  'g',
);
