import {isClosing, isOpening} from './brackets.ts';
import type {Cursor} from './cursor.ts';
import type {Side} from './face.ts';
import {readColour} from './read-colour.ts';
import type {NumberRange, RowLabel} from './row-syntax.ts';

const every = ['all', 'every', 'each'];
const which = ['other', 'alternate', 'next', 'subsequent', 'succeeding', 'remain', 'intermediate', 'uneven'];
const unnumbered = [
  'next',
  'foundation',
  'establish',
  'setup',
  'preparation',
  'prep',
  'inc',
  'dec',
  'last',
  'eyelet',
  'buttonhole',
  'turning',
  'short',
  'plain',
];
const inBrackets = [
  'rs',
  'ws',
  'right',
  'wrong',
  'side',
  'facing',
  'inc',
  'dec',
  'paired',
  'pair',
  'row',
  'round',
  ',',
  'of',
  'work',
  'short',
  'as',
  'for',
  '&',
  'lace',
  'cable',
  'shaping',
  'st',
  'establish',
  'up',
];

/**
 * Reads `Row 1 (RS):`, `Rows 3–8:`, `2nd and every alternate row.—`, `Rnd 12:`, `All WS rows:`, `Next row (dec):`.
 * Null, and nothing read, when no label begins here. In the middle of a line its colon is needed.
 */
export function readLabel(cursor: Cursor): RowLabel | null {
  const from = cursor.at;
  const draft = new LabelDraft(cursor);
  if (!draft.readRows()) return givenUp(cursor, from);
  draft.readRemarks();
  const end = cursor.spanFrom(from);
  const isMarked = takeTerminator(cursor) || (draft.ranges.length > 0 && takeLikeness(cursor));
  if (isMarked && draft.side === null) draft.readRemarks();
  if (draft.every === 'row' && isAlikeAhead(cursor)) return givenUp(cursor, from);
  const startsLine = cursor.reading.tokens[from]?.startsLine ?? false;
  if (!isMarked && !(startsLine && draft.isSure)) return givenUp(cursor, from);
  const {isRound, ranges, every: all, side, sideSpan, says, isPaired, colour} = draft;
  const text = cursor.written(end);
  return {text, span: end, isRound, ranges, every: all, side, sideSpan, says, isPaired, colour};
}

class LabelDraft {
  readonly cursor: Cursor;
  isRound = false;
  ranges: NumberRange[] = [];
  every: RowLabel['every'] = null;
  side: Side | null = null;
  sideSpan: RowLabel['sideSpan'] = null;
  says: RowLabel['says'] = null;
  isPaired = false;
  colour: RowLabel['colour'] = null;
  /** A label even without a colon. */
  isSure = true;

  constructor(cursor: Cursor) {
    this.cursor = cursor;
  }

  readRows(): boolean {
    const {cursor} = this;
    if (isRowWord(cursor.peek(1)?.text) && cursor.peek(2)?.kind === 'number') cursor.take('pattern', 'main');
    if (this.takeRowWord() || (cursor.is('r') && cursor.peek(1)?.kind === 'number' && cursor.take('r'))) {
      cursor.take('no');
      if (this.readNumbers()) {
        this.readEveryTail();
        return true;
      }
      return false;
    }
    if (cursor.peek()?.kind === 'ordinal')
      return this.readNumbers() && (this.readEveryTail() || this.takeRowWord());
    if (this.readEvery()) return true;
    return this.readUnnumbered() || this.readBareNumber();
  }

  /** `(RS)`, `(inc row)`, `RS`; a bracket with other words is left to the steps. */
  readRemarks(): void {
    const {cursor} = this;
    for (let rounds = 0; rounds < 3; rounds++) {
      const from = cursor.at;
      if (isOpening(cursor.peek()?.text)) {
        cursor.at += 1;
        while (this.takeSide() || this.takeSays() || this.takeColour() || cursor.take(...inBrackets));
        if (!isClosing(cursor.peek()?.text) || cursor.at === from + 1) {
          cursor.at = from;
          return;
        }
        cursor.at += 1;
      } else if (!this.takeSide()) return;
    }
  }

  private readNumbers(): boolean {
    const {cursor} = this;
    for (let token = cursor.peek(); token; token = cursor.peek()) {
      if ((token.kind !== 'number' && token.kind !== 'ordinal') || token.values.length > 1) break;
      cursor.at += 1;
      const last = this.readRangeEnd();
      this.ranges.push({first: token.value, last: Math.max(token.value, last ?? token.value)});
      const isListed = cursor.peek(1)?.kind === 'number' || cursor.peek(1)?.kind === 'ordinal';
      const isJoined =
        (cursor.is(',') && cursor.is('&', 1)) || ((cursor.is(',') || cursor.is('&')) && isListed);
      if (!isJoined) break;
      const before = cursor.at;
      cursor.take(',');
      cursor.take('&');
      const next = cursor.peek();
      if (next?.kind !== 'number' && next?.kind !== 'ordinal') {
        cursor.at = before;
        break;
      }
    }
    return this.ranges.length > 0;
  }

  private readRangeEnd(): number | null {
    const {cursor} = this;
    const next = cursor.peek(1);
    if (next?.kind !== 'number' && next?.kind !== 'ordinal') return null;
    if (!cursor.take('—', '-', 'to', 'through', 'thru', '/')) return null;
    cursor.at += 1;
    return next.value;
  }

  /** `and all WS rows`, `and every alternate row`. */
  private readEveryTail(): boolean {
    const {cursor} = this;
    const from = cursor.at;
    if (cursor.is('row') || cursor.is('round')) this.takeRowWord();
    cursor.take(',');
    const isBracketed = cursor.take('(', '[');
    if (cursor.take('&') && this.readEvery() && (!isBracketed || cursor.take(')', ']'))) return true;
    cursor.at = from;
    return false;
  }

  private readEvery(): boolean {
    const {cursor} = this;
    const from = cursor.at;
    const isEvery = cursor.take(...every);
    let isAlternate = false;
    while (cursor.take(...which) || cursor.take('follow', 'even', 'odd')) {
      const word = cursor.peek(-1)?.text;
      isAlternate ||= word === 'alternate' || word === 'other' || word === 'intermediate';
      if (word === 'even' || word === 'odd') this.every = word;
    }
    const side = this.takeSide();
    cursor.take('number', 'numbered');
    if ((isEvery || isAlternate || side || this.every) && this.takeRowWord()) {
      if (side) this.every = this.side;
      else this.every ??= isAlternate ? 'alternate' : 'row';
      return true;
    }
    this.every = null;
    cursor.at = from;
    return false;
  }

  private readUnnumbered(): boolean {
    const {cursor} = this;
    const from = cursor.at;
    let words = 0;
    while (this.takeSays() || cursor.take('up', ...unnumbered)) words += 1;
    if (words > 0 && this.takeRowWord()) return true;
    cursor.at = from;
    return false;
  }

  /** `1.` or `1:` at the start of a line. */
  private readBareNumber(): boolean {
    const {cursor} = this;
    const token = cursor.peek();
    this.isSure = false;
    if (token?.kind !== 'number' || token.values.length > 1 || !token.startsLine) return false;
    if (!cursor.is(':', 1) && !cursor.is('.', 1) && !cursor.is(')', 1)) return false;
    cursor.at += 1;
    this.ranges.push({first: token.value, last: token.value});
    return true;
  }

  private takeRowWord(): boolean {
    if (this.cursor.take('row')) return true;
    this.isRound = this.cursor.take('round');
    return this.isRound;
  }

  private takeSide(): boolean {
    const {cursor} = this;
    const from = cursor.at;
    const isLong = (cursor.is('right') || cursor.is('wrong')) && cursor.is('side', 1);
    const side =
      cursor.is('rs') || (isLong && cursor.is('right')) ? 'RS' : cursor.is('ws') || isLong ? 'WS' : null;
    if (!side) return false;
    cursor.at += isLong ? 2 : 1;
    this.side = side;
    this.sideSpan = cursor.spanFrom(from);
    cursor.take('facing');
    return true;
  }

  private takeColour(): boolean {
    const colour = readColour(this.cursor);
    this.colour = colour ?? this.colour;
    return colour !== null;
  }

  private takeSays(): boolean {
    if (this.cursor.take('paired', 'pair')) this.isPaired = true;
    else if (this.cursor.take('inc', 'incd')) this.says = 'increase';
    else if (this.cursor.take('dec', 'decd')) this.says = 'decrease';
    else return false;
    return true;
  }
}

function isRowWord(text: string | undefined): boolean {
  return text === 'row' || text === 'round';
}

function takeTerminator(cursor: Cursor): boolean {
  const from = cursor.at;
  if (cursor.take(')')) return true;
  while (cursor.take(':', '.', '—', '=') || (cursor.at === from && cursor.take('-')));
  return cursor.at > from;
}

/** `The third row is like the first`. */
function takeLikeness(cursor: Cursor): boolean {
  const isLike = ['like', 'as', 'same'].includes(cursor.peek(1)?.text ?? '');
  return isLike && cursor.take('is', 'are');
}

/** `All the rows are alike`, `every row is the same`: a sentence that repeats the row before it. */
function isAlikeAhead(cursor: Cursor): boolean {
  const ahead = cursor.is('is') || cursor.is('are') ? 1 : 0;
  const isAlike = cursor.is('same', ahead) || cursor.is('alike', ahead);
  const behind = cursor.peek(ahead + 1);
  return isAlike && (!behind || behind.startsLine || behind.text === '.' || behind.text === ';');
}

function givenUp(cursor: Cursor, from: number): null {
  cursor.at = from;
  return null;
}
