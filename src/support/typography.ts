/** A part of a text to be set otherwise. Edits come in order and do not overlap. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Stands in a text for something inside a sentence that is no text, such as a citation or code. Never changed. */
export const objectMark = '\uFFFC';

const nbsp = '\u00A0';
const numeral = '[\\d½¼¾⅓⅔⅛⅜⅝⅞]';
const unit = '(?:mm|cm|m|in|ft|yd|g|kg|oz|sts?|rows?|rnds?|%)(?![\\p{L}\\d])';
const fractionSigns: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/3': '⅓',
  '2/3': '⅔',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

/**
 * Patterns in order: what matches first is taken. A pattern without `set` shields its text from the others.
 * `1/2 RC` is a cable and `1/3 rib` a fabric, not a half and a third.
 */
const patterns: readonly {readonly pattern: string; readonly set: ((match: string) => string) | null}[] = [
  {pattern: '(?:https?://|www\\.)\\S+', set: null},
  {pattern: '[^\\s@]{1,64}@[^\\s@]{1,255}\\.\\S+', set: null},
  {pattern: '\\d{4}-\\d{2}-\\d{2}(?!\\d)', set: null},
  {pattern: '(?<!-)---(?!-)', set: () => '—'},
  {pattern: '(?<!-)--(?!-)', set: () => '–'},
  {pattern: '(?<= )-(?= )', set: () => '–'},
  {pattern: '(?<!\\.)\\.\\.\\.(?!\\.)', set: () => '…'},
  {
    pattern:
      '(?<=(?<![\\p{L}\\d/.,-])\\d{1,4}) (?:[1-3]/[2348]|[57]/8)(?![\\p{L}\\d/])(?! ?(?:\\p{Lu}{2,}|rib|cable|twist|cross|[Rr]ight|[Ll]eft))',
    set: (match) => fractionSigns[match.slice(1)] ?? match,
  },
  {
    pattern:
      '(?<![\\p{L}\\d/.,½¼¾-])(?:[1-3]/[2348]|[57]/8)(?![\\p{L}\\d/])(?! ?(?:\\p{Lu}{2,}|rib|cable|twist|cross|[Rr]ight|[Ll]eft))',
    set: (match) => fractionSigns[match] ?? match,
  },
  {
    pattern: '(?<=(?<![\\p{L}\\d.-])\\d{1,6}(?:\\.\\d{1,3})?)-(?=\\d{1,6}(?:\\.\\d{1,3})?(?![\\p{L}\\d-]))',
    set: () => '–',
  },
  {
    pattern: `(?<=(?:${numeral}|\\d ?(?:mm|cm|m|in|ft|yd)|\\d["″]))( ?)[x×]( ?)(?=\\d)`,
    set: (match) => match.replaceAll(' ', nbsp).replace('x', '×'),
  },
  {pattern: `(?<=${numeral}) (?=${unit})`, set: () => nbsp},
];
const anyPattern = new RegExp(patterns.map(({pattern}) => `(${withoutGroups(pattern)})`).join('|'), 'gu');

/**
 * Sets plain text as a compositor would: curly quotation marks, inch and foot signs after numbers, dashes in ranges,
 * fractions, × between numbers, and no line end between a number and its unit.
 */
export function typographicEdits(text: string): readonly Edit[] {
  const edits: Edit[] = [];
  const shielded: {readonly start: number; readonly end: number}[] = [];
  for (const match of text.matchAll(anyPattern)) {
    const [start, end] = [match.index, match.index + match[0].length];
    const set = patterns[match.slice(1).findIndex((group) => group !== undefined)]?.set;
    if (set) edits.push({start, end, text: set(match[0])});
    else shielded.push({start, end});
  }
  const isShielded = ({start}: Edit) => shielded.some((range) => range.start <= start && start < range.end);
  const quotes = [...quoteEdits(text, '"', '“”″'), ...quoteEdits(text, "'", '‘’′')];
  return [...edits, ...quotes.filter((edit) => !isShielded(edit))].sort((a, b) => a.start - b.start);
}

/** `text` with its edits made. */
export function setTypography(text: string): string {
  return applyEdits(text, 0, typographicEdits(text));
}

/** `part` begins at `offset` of the text that `edits` count in; edits that do not lie within it are left out. */
export function applyEdits(part: string, offset: number, edits: readonly Edit[]): string {
  let [result, done] = ['', 0];
  for (const {start, end, text} of edits) {
    if (start < offset || end > offset + part.length) continue;
    result += part.slice(done, start - offset) + text;
    done = end - offset;
  }
  return result + part.slice(done);
}

/**
 * Straight marks become opening or closing ones, or the sign of a measure where a number stands before. After a number
 * within a quotation it closes, unless a later mark can do that.
 */
function quoteEdits(text: string, straight: string, [opening, closing, measure]: string): readonly Edit[] {
  const marks = [...text.matchAll(new RegExp(straight, 'g'))].map(({index}) => index);
  const opens = marks.map((at) => /[\s([{“‘—–/-]/.test(beforeMarks(text, at)));
  let isOpen = false;
  return marks.map((at, number) => {
    const before = text[at - 1] ?? ' ';
    const after = text[at + 1] ?? ' ';
    const edit = (sign = straight): Edit => ({start: at, end: at + 1, text: sign});
    if (straight === "'" && /\p{L}/u.test(after) && /[\p{L}\d]/u.test(before)) return edit(closing); // it's
    if (opens[number]) {
      if (straight === "'" && /^\d0s/.test(text.slice(at + 1))) return edit(closing); // the '70s
      isOpen = true;
      return edit(opening);
    }
    const nextClosesToo = number + 1 < marks.length && !opens[number + 1];
    if (/[\d½¼¾⅓⅔⅛⅜⅝⅞]/.test(before) && (!isOpen || nextClosesToo)) return edit(measure);
    isOpen = false;
    return edit(closing);
  });
}

/** What stands before a mark and its neighbours: a mark behind another one opens if that one stands at the beginning of a word. */
function beforeMarks(text: string, at: number): string {
  let index = at - 1;
  while (at - index <= 3 && /["']/.test(text[index] ?? ' ')) index--;
  return text[index] ?? ' ';
}

/** Named by position, so only the outer groups may capture. */
function withoutGroups(pattern: string): string {
  return pattern.replace(/\((?!\?)/g, '(?:');
}
