import {failure, type Problem, type Result, type Span, success} from '../../support/result.ts';
import {type GaugeCount, parseGaugeCount} from '../quantity.ts';
import type {PieceGauge, PlacedStep, WrittenPiece} from './piece-syntax.ts';
import {readPieceStep} from './read-piece-step.ts';

/** More lines than any garment piece has steps; keeps work on hostile text small. */
const mostLines = 300;
const longestLine = 400;

/**
 * Reads a `piece` block: `name:` and `gauge:` or `gauge of:`, then one step to a line. An empty line and a line that
 * begins with `#` are passed over. Never throws: a line that cannot be read is a problem and the rest is still read.
 * Spans count from the start of `text`.
 */
export function readPiece(text: string): {
  readonly piece: WrittenPiece;
  readonly problems: readonly Problem[];
} {
  const problems: Problem[] = [];
  const steps: PlacedStep[] = [];
  let name: string | null = null;
  let gauge: PieceGauge | null = null;
  const lines = linesOf(text);
  for (const {line, span} of lines.slice(0, mostLines)) {
    const header = /^(?<key>name|gauge of|gauge)\s*:\s*(?<value>.*)$/i.exec(line)?.groups;
    if (line.length > longestLine) {
      problems.push({
        message: `a line of \`${line.length}\` letters is no step of a piece`,
        hint: 'Write one step to a line.',
        span,
      });
    } else if (header) {
      const {key = '', value = ''} = header;
      if (key.toLowerCase() === 'name') name = value.trim() || null;
      else {
        const result = key.toLowerCase() === 'gauge' ? readGaugeLine(value) : itemGauge(value);
        if (result.ok) gauge = result.value;
        else problems.push(...result.problems.map((problem) => ({...problem, span})));
      }
    } else {
      const result = readPieceStep(line);
      if (result.ok) steps.push({step: result.value, text: line, span});
      else problems.push(...result.problems.map((problem) => ({...problem, span})));
    }
  }
  const beyond = lines[mostLines];
  if (beyond) {
    problems.push({
      message: `the block has more than \`${mostLines}\` lines`,
      hint: 'Write a piece of its own for each part of the garment.',
      span: beyond.span,
    });
  }
  return {piece: {name, gauge, steps}, problems};
}

function linesOf(text: string): readonly {readonly line: string; readonly span: Span}[] {
  const found: {line: string; span: Span}[] = [];
  let offset = 0;
  for (const raw of text.split('\n')) {
    const line = raw.trim();
    const start = offset + raw.length - raw.trimStart().length;
    if (line !== '' && !line.startsWith('#')) found.push({line, span: {start, end: start + line.length}});
    offset += raw.length + 1;
  }
  return found;
}

function itemGauge(value: string): Result<PieceGauge> {
  return success({kind: 'of item', id: value.trim()});
}

/** `22 sts and 30 rows over 10 cm`, `22 sts over 10 cm, 30 rows over 4 in`. */
function readGaugeLine(value: string): Result<PieceGauge> {
  const parts = value.split(/\s+and\s+|[,;]\s+/);
  const over = /\s(?:over|to|per)\s.*$/i.exec(value)?.[0] ?? '';
  const stitches: GaugeCount[] = [];
  const rows: GaugeCount[] = [];
  for (const part of parts) {
    const unit = /\b(?:(?<rows>rows?|rounds?|rnds?)|stitch(?:es)?|sts?)\b/i.exec(part);
    if (!unit) return failure(gaugeForm(value));
    const count = parseGaugeCount(/\s(?:over|to|per)\s/i.test(part) ? part : `${part}${over}`);
    if (!count.ok) return count;
    (unit.groups?.rows ? rows : stitches).push(count.value);
  }
  return stitches.length > 0 && rows.length > 0
    ? success({kind: 'written', stitches, rows})
    : failure(gaugeForm(value));
}

function gaugeForm(value: string): Problem {
  return {
    message: `\`${value}\` does not say stitches and rows`,
    hint: 'Write both, such as `gauge: 22 sts and 30 rows over 10 cm`.',
    span: {start: 0, end: 0},
  };
}
