import type {Problem, Span} from '../../support/result.ts';
import type {Token} from './lex-row.ts';
import type {PhraseTree} from './phrase-tree.ts';
import type {IntoStep, Sized} from './row-syntax.ts';
import type {Meaning} from './vocabulary.ts';

/** What every part of the reader needs of the block. */
export interface Reading {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly problems: Problem[];
  readonly sizeCount: number;
  readonly phrases: PhraseTree<Meaning>;
  /** The pattern's own abbreviations, which are looked up first. */
  readonly ownPhrases: PhraseTree<Meaning>;
  readonly ownNames: readonly string[];
  /** Those of them whose definition is faulty, so that rows with them cannot be counted. */
  readonly unsure: ReadonlySet<string>;
  readonly makeOneIsOver: boolean;
  /** Yarns that the block has named so far, besides the customary names. */
  readonly colours: Set<string>;
  /** How many tokens were looked at, some more than once: the measure of the work done. */
  visited: number;
}

/** A place among the tokens of one row, from which reading goes on. */
export class Cursor {
  readonly reading: Reading;
  /** Index of the next token. */
  at: number;
  /** Index behind the last token of the row. */
  readonly to: number;
  /** False once something could not be read. */
  isWholeRead = true;
  /** The groups of this row that were worked into one stitch, the last few. */
  readonly intos: IntoStep[] = [];
  /** The yarn that is in use, by the name that the row gives it. */
  colour: string | null = null;

  constructor(reading: Reading, at: number, to: number) {
    this.reading = reading;
    this.at = at;
    this.to = to;
  }

  peek(ahead = 0): Token | undefined {
    this.reading.visited += 1;
    const index = this.at + ahead;
    return index < this.to ? this.reading.tokens[index] : undefined;
  }

  is(text: string, ahead = 0): boolean {
    return this.peek(ahead)?.text === text;
  }

  /** Steps over the next token when it is one of `texts`. */
  take(...texts: readonly string[]): boolean {
    const token = this.peek();
    if (!token || !texts.includes(token.text)) return false;
    this.at += 1;
    return true;
  }

  /** From the token at index `from` to the one just read. */
  spanFrom(from: number): Span {
    const {tokens} = this.reading;
    const first = tokens[from];
    const last = tokens[Math.max(from, this.at - 1)];
    return {start: first?.start ?? 0, end: last?.end ?? first?.end ?? 0};
  }

  written(span: Span): string {
    return this.reading.text.slice(span.start, span.end);
  }

  complain(message: string, hint: string, span: Span): void {
    this.isWholeRead = false;
    this.reading.problems.push({message, hint, span});
  }

  /** The number token at `index` as a count per size; a list of the wrong length is reported. */
  sizedAt(index: number): Sized {
    const token = this.reading.tokens[index];
    const span = {start: token?.start ?? 0, end: token?.end ?? 0};
    const values = token?.values.length ? token.values : [token?.value ?? 0];
    const {sizeCount} = this.reading;
    if (values.length > 1 && values.length !== sizeCount) {
      this.complain(
        `\`${this.written(span)}\` gives ${values.length} sizes where the pattern has ${sizeCount}`,
        'Give one number for all sizes, or as many numbers as the cast on has.',
        span,
      );
      return {values: values.slice(0, 1), span};
    }
    return {values, span};
  }
}
