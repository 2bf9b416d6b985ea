import type {Problem} from '../../support/result.ts';
import {Cursor, type Reading} from './cursor.ts';
import {lexRow} from './lex-row.ts';
import {measureWords} from './measure-words.ts';
import {addPhrase, makePhraseTree} from './phrase-tree.ts';
import {phraseTree} from './phrases.ts';
import {readBindOffSentence} from './read-bind-off-sentence.ts';
import {readHeader} from './read-header.ts';
import {readLabel} from './read-label.ts';
import {type OwnAbbreviation, ownStitch, type WordedAbbreviation} from './read-own-abbreviation.ts';
import {readPlainRows} from './read-plain-rows.ts';
import {readRowRepeat} from './read-row-repeat.ts';
import {readSteps} from './read-steps.ts';
import type {RowLabel, RowRepeat, RowsHeader, WrittenPattern, WrittenRow} from './row-syntax.ts';
import type {Stitch} from './stitch.ts';
import type {Meaning} from './vocabulary.ts';

export interface ReadRows {
  readonly pattern: WrittenPattern;
  readonly problems: readonly Problem[];
  /** How many tokens were looked at, some more than once: the measure of the work done. */
  readonly visited: number;
}

/**
 * Reads a block of written rows. `ownAbbreviations` are those that the item defines outside the block. Never throws:
 * what cannot be read is a problem at the exact word, and the rest is read all the same. Spans count from the start of
 * `text`.
 */
export function readRows(text: string, ownAbbreviations: readonly Stitch[] = []): ReadRows {
  const problems: Problem[] = [];
  const {header, rest, unsure, worded} = readHeader(text, ownAbbreviations, problems);
  const tokens = lexRow(rest);
  const base: Reading = {
    text,
    tokens,
    problems,
    sizeCount: sizeCountOf(header),
    phrases: phraseTree,
    ownPhrases: ownPhrasesOf(header.ownAbbreviations),
    ownNames: header.ownAbbreviations.map((stitch) => stitch.id),
    unsure: new Set(unsure),
    makeOneIsOver: header.readings.makeOne === 'yarn over',
    colours: new Set(header.colours),
    visited: tokens.length,
  };
  const explained = worded.map((each) => readExplained(base, each));
  const own = [...header.ownAbbreviations, ...explained.map(({stitch}) => stitch)];
  const doubtful = explained.flatMap(({stitch, isSure}) => (isSure ? [] : [stitch.id]));
  const reading: Reading =
    worded.length === 0
      ? base
      : {
          ...base,
          ownPhrases: ownPhrasesOf(own),
          ownNames: own.map(({id}) => id),
          unsure: new Set([...unsure, ...doubtful]),
        };
  const entries = readEntries(reading);
  const whole = {...header, ownAbbreviations: own, colours: [...reading.colours]};
  return {pattern: {header: whole, entries}, problems: withoutEcho(problems), visited: reading.visited};
}

/** A sentence in which a row ends before it is looked at twice, and what is wrong in it found twice. */
function withoutEcho(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.filter(({span, message}) => {
    const key = `${span.start} ${span.end} ${message}`;
    return !seen.has(key) && seen.add(key);
  });
}

/** What an abbreviation uses and makes, from the steps that explain it. */
function readExplained(
  base: Reading,
  {name, nameSpan, steps: span, words}: WordedAbbreviation,
): OwnAbbreviation {
  const shift = span.start;
  const tokens = lexRow(base.text.slice(span.start, span.end)).map((token) => ({
    ...token,
    start: token.start + shift,
    end: token.end + shift,
  }));
  const cursor = new Cursor({...base, tokens}, 0, tokens.length);
  const {steps} = readSteps(cursor);
  const measure = cursor.isWholeRead ? measureWords(steps) : null;
  if (cursor.isWholeRead && !measure) {
    cursor.complain(
      `what \`${name}\` uses and makes cannot be told from its words`,
      `Write it as a line such as \`${name}: uses 1, makes 1, "${words.slice(0, 30)}"\`.`,
      nameSpan,
    );
  }
  const {uses, makes} = measure ?? {uses: 1, makes: 1};
  return {stitch: ownStitch(name, uses, makes, words), isSure: measure !== null};
}

/** As many sizes as the header names or gives numbers for; at least one. */
export function sizeCountOf(header: RowsHeader): number {
  return Math.max(1, header.sizes.length, header.start?.values.length ?? 1);
}

function readEntries(reading: Reading): (WrittenRow | RowRepeat)[] {
  const entries: (WrittenRow | RowRepeat)[] = [];
  const count = reading.tokens.length;
  let at = 0;
  while (at < count) {
    const cursor = new Cursor(reading, at, count);
    const plain = isSentenceStart(reading, at) ? readPlainRows(cursor) : null;
    if (plain) {
      entries.push(...plain);
      at = skipStops(reading, cursor.at);
      continue;
    }
    const label = readLabel(cursor) ?? readBindOffSentence(cursor);
    const bodyStart = cursor.at;
    const repeat = readRowRepeat(cursor, label);
    if (repeat) {
      entries.push(repeat);
      at = skipStops(reading, cursor.at);
      continue;
    }
    const end = findRowEnd(reading, bodyStart);
    if (label) entries.push(readRow(reading, label, bodyStart, end));
    else reportLoose(reading, at, end);
    at = Math.max(end, at + 1);
  }
  return entries;
}

function readRow(reading: Reading, label: RowLabel, from: number, to: number): WrittenRow {
  const cursor = new Cursor(reading, from, to);
  cursor.colour = label.colour;
  const {steps, stated} = readSteps(cursor);
  const end = reading.tokens[to - 1]?.end ?? label.span.end;
  const span = {start: label.span.start, end: Math.max(label.span.end, end)};
  if (steps.length === 0 && cursor.isWholeRead) {
    cursor.complain(`\`${label.text}\` says nothing to work`, 'Write what is worked in it.', label.span);
  }
  return {kind: 'row', label, steps, stated, isWholeRead: cursor.isWholeRead, span};
}

/** A row ends where the next label or row repeat begins: on a new line, or behind a full stop, `;` or dash. */
function findRowEnd(reading: Reading, from: number): number {
  const {tokens} = reading;
  for (let index = from; index < tokens.length; index++) {
    const token = tokens[index];
    if (!token) break;
    const before = tokens[index - 1]?.text;
    const isClause = before === '.' || before === ';' || before === '—';
    if (!(token.startsLine || (isClause && index > from))) continue;
    const cursor = new Cursor(reading, index, tokens.length);
    if (readLabel(cursor)) return index;
    // The first of its words have been looked at as such a sentence.
    if (index === from) continue;
    if (readRowRepeat(cursor, null) || readBindOffSentence(cursor)) return index;
    if (isSentenceStart(reading, index) && readPlainRows(cursor)) return index;
  }
  return tokens.length;
}

function isSentenceStart({tokens}: Reading, index: number): boolean {
  return tokens[index]?.startsLine === true || tokens[index - 1]?.text === '.';
}

function skipStops(reading: Reading, from: number): number {
  let at = from;
  while (/^[.;,:)—]$/.test(reading.tokens[at]?.text ?? '') || reading.tokens[at]?.text === ']') at += 1;
  return at;
}

function reportLoose(reading: Reading, from: number, to: number): void {
  const first = reading.tokens[from];
  const last = reading.tokens[Math.max(from, to - 1)];
  if (!first || !last) return;
  const lineEnd = reading.text.indexOf('\n', first.start);
  const end = Math.min(last.end, lineEnd < 0 ? last.end : lineEnd);
  const line = reading.text.slice(first.start, end).trimEnd();
  reading.problems.push({
    message: `\`${line.length > 60 ? `${line.slice(0, 60)}…` : line}\` belongs to no row`,
    hint: 'Begin each row with its label, such as `Row 1 (RS):` or `Rnd 1:`.',
    span: {start: first.start, end: first.start + line.length},
  });
}

function ownPhrasesOf(own: readonly Stitch[]) {
  const tree = makePhraseTree<Meaning>();
  for (const stitch of own) {
    const phrase = lexRow(stitch.id)
      .map((token) => token.text)
      .filter((text) => !/[()|]/.test(text))
      .join(' ');
    if (phrase !== '') addPhrase(tree, phrase, {says: 'stitch', stitch, isCounted: false});
  }
  return tree;
}
