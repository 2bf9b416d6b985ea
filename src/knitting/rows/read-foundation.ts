import type {Token} from './lex-row.ts';

const joins = new Set(['+', 'plus', '&', ',', 'with', 'then']);
const extras = new Set(['over', 'st', 'extra', 'more', 'for', 'besides', 'edge', 'additional']);
const patterns = new Set([
  'pattern',
  'rep',
  'scallop',
  'feather',
  'leaf',
  'diamond',
  'vandyke',
  'point',
  'shell',
]);

/**
 * The multiple that a line before the rows gives: `multiple: 6 + 5`, `multiple of 6 sts plus 5`, `any number of stitches
 * divisible by 6, and 5 over`, `an uneven number of stitches`, `12 stitches for each pattern and 4 for the edge`. Null
 * when it gives none.
 */
export function readMultiple(tokens: readonly Token[]): {of: number; plus: number} | null {
  const at = (index: number) => tokens[index]?.text ?? '';
  for (let index = 0; index < tokens.length; index++) {
    const text = at(index);
    const isNumberOf = /^number$/.test(at(index + 1)) && (at(index + 2) === 'of' || at(index + 2) === '');
    if (isNumberOf && text === 'even') return {of: 2, plus: 0};
    if (isNumberOf && (text === 'odd' || text === 'uneven')) return {of: 2, plus: 1};
    const next = text === 'multiple' ? index + 1 : isDivided(text) && at(index + 1) === 'by' ? index + 2 : -1;
    if (next >= 0) return stated(tokens, next);
    const number = tokens[index];
    const isEach = ['each', 'every', 'a'].includes(at(index + 3)) && patterns.has(at(index + 4));
    if (
      number?.kind === 'number' &&
      at(index + 1) === 'st' &&
      (at(index + 2) === 'for' || at(index + 2) === 'to') &&
      isEach
    ) {
      return {of: number.value, plus: extraBehind(tokens, index + 5, number.value)};
    }
  }
  return null;
}

function isDivided(text: string): boolean {
  return ['divisible', 'divided', 'divides', 'dividing', 'divide'].includes(text);
}

function stated(tokens: readonly Token[], from: number): {of: number; plus: number} | null {
  let index = from;
  while ([':', 'of', 'by', '(', 'a'].includes(tokens[index]?.text ?? '')) index += 1;
  const number = tokens[index];
  if (number?.kind !== 'number') return null;
  return {of: number.value, plus: extraBehind(tokens, index + 1, number.value)};
}

/** Every `+ 5`, `plus 2 edge sts`, `and 5 over`; `minus 1` is one short of another repeat. */
function extraBehind(tokens: readonly Token[], from: number, of: number): number {
  let plus = 0;
  for (let index = from; index < tokens.length; index++) {
    const token = tokens[index];
    const before = tokens[index - 1]?.text ?? '';
    if (token?.kind !== 'number') continue;
    const isJoined = joins.has(before) || before === 'an' || before === 'extra';
    if (before === 'minus' || before === '\u2014' || before === '-') plus += of - token.value;
    else if (isJoined && (before === '+' || before === 'plus' || isExtra(tokens[index + 1])))
      plus += token.value;
    else break;
  }
  return plus;
}

function isExtra(token: Token | undefined): boolean {
  return token === undefined || extras.has(token.text) || /^[.;)\]]$/.test(token.text);
}

const castOnWords = new Set(['loosely', ':', ',', 'a', 'total', 'of']);

/**
 * The stitches that a line before the rows begins with, per size: `cast on: 84 (92, 100)`, `With MC cast on 24 sts`,
 * `stitches: 29`, `panel of 12 sts`. Null when it gives none.
 */
export function readStartCount(
  tokens: readonly Token[],
): {values: readonly number[]; isCastOn: boolean} | null {
  const [first] = tokens;
  const castOn = tokens.findIndex(
    ({text}, index) =>
      text === 'co' || text === 'caston' || (text === 'cast' && tokens[index + 1]?.text === 'on'),
  );
  const isKeyed = first?.text === 'st' || first?.text === 'panel';
  const from = castOn < 0 ? (isKeyed ? 1 : -1) : castOn + (tokens[castOn]?.text === 'cast' ? 2 : 1);
  if (from < 0) return null;
  let index = from;
  while (castOnWords.has(tokens[index]?.text ?? '') || tokens[index]?.text === 'over') index += 1;
  const number = tokens[index];
  return number?.kind === 'number' ? {values: number.values, isCastOn: castOn >= 0} : null;
}
