import {formatLengthDifference, type UnitOrder} from '../knitting/format-quantity.ts';
import {Fraction} from '../knitting/fraction.ts';
import {lengthOf} from '../knitting/gauge.ts';
import {capEase, type JoinCheck, joinPieces, seamTolerance} from '../knitting/pieces/join-pieces.ts';
import type {WorkedPiece, WorkedStep} from '../knitting/pieces/worked-piece.ts';
import {writePieceRows} from '../knitting/pieces/write-piece-rows.ts';
import {spreadOver} from '../knitting/uncertainty.ts';
import {type Gauge, stitches} from '../knitting/units.ts';
import {englishList} from '../support/english-list.ts';
import {failure, type Problem, type Result, success} from '../support/result.ts';
import {setTypography} from '../support/typography.ts';
import {oneOf, unreadable} from './attribute-readers.ts';
import {arithmeticTable, optional, type Reader, withDefault} from './attributes.ts';
import {capitalized} from './capitalized.ts';
import {computedFigure, type FigureGroup} from './computed-figure.ts';
import {computed} from './define-table.ts';
import {lengthRounding, roundingWords} from './formula-words.ts';
import {type PieceOfItem, pieceOfItem} from './piece-source.ts';
import {drawSchematic} from './schematic-drawing.ts';
import {lengthShown, spreadFormula, spreadWords} from './spread-words.ts';

const words: Reader<string> = (text) => success(text);

/** `::piece`: a garment piece from its `piece` block: counts and measures step by step, schematic, seams, written rows. */
export const pieceTable = arithmeticTable({
  id: 'piece',
  summary: 'a garment piece step by step, with its schematic, its seams and its written rows',
  example: '::piece{name=back}',
  attributes: {
    name: optional(words),
    block: optional(words),
    against: optional(words),
    rows: withDefault(oneOf('yes', 'no'), 'no'),
  },
  compute({name, block, against, rows: shown}, binder, item) {
    const order = binder.settings.units;
    if (name !== null && block !== null) {
      return unreadable('both `name` and `block` say which piece', 'Write one of them.');
    }
    const piece = pieceOfItem(binder, item, name ?? block);
    if (!piece.ok) return piece;
    const joins =
      against === null
        ? success([])
        : joinLines(piece.value, against, (other) => pieceOfItem(binder, item, other), order);
    if (!joins.ok) return joins;
    const {worked, gauges, stitchGauge, rowGauge} = piece.value;
    const isTube = worked.panels.some(({isRound}) => isRound);
    return success(
      computed(() =>
        computedFigure({
          name: 'piece',
          caption: `${capitalized(piece.value.name)}: the steps, and the piece drawn to scale`,
          columns: ['Step', 'sts after', 'rows so far', 'width', 'length'],
          groups: [
            {title: null, lines: worked.steps.map((step) => stepLine(step, piece.value, order))},
            {title: 'At the gauge measured', lines: spreadLines(piece.value, order)},
            ...(joins.value.length > 0 ? [{title: 'Seams', lines: joins.value}] : []),
          ],
          drawings: worked.panels.map((panel, index) =>
            drawSchematic(
              piece.value.name,
              panel,
              worked.marks.filter((mark) => mark.panel === index),
              gauges,
              order,
            ),
          ),
          instructions: shown === 'yes' ? rowLines(worked) : [],
          formulas: [
            `Width: stitches ÷ gauge. Length: rows ÷ gauge. Gauge: ${stitchGauge.words}; ${rowGauge.words}.`,
            ...(isTube ? ['A tube’s width is that all round; drawn flat, it is half of it.'] : []),
            'Drawn as seen from the right side, each edge straight from the start of a step to its end.',
            ...(joins.value.length > 0 ? [joinFormula(order)] : []),
            spreadFormula,
          ],
          rounding: roundingWords(lengthRounding, 'a length to work, to the nearest row'),
          source:
            'Source: plain arithmetic; where shaping falls within its rows, and what seams may differ by, is common practice, no source.',
        }),
      ),
    );
  },
});

function stepLine(step: WorkedStep, {gauges}: PieceOfItem, order: UnitOrder) {
  const shown = lengthShown(order);
  const text = step.lines.map((line) => line.text).join('; at the same time ');
  return {
    label: setTypography(step.part === null ? text : `${step.part}: ${text}`),
    cells: [
      `${step.stitches}`,
      `${step.rowsSoFar}`,
      step.stitches === 0
        ? ''
        : `${shown(lengthOf(stitches(step.stitches), gauges.stitches))}${step.isRound ? ' round' : ''}`,
      shown(lengthSoFar(step, gauges.rows)),
    ],
  };
}

function spreadLines({worked, stitchGauge, rowGauge}: PieceOfItem, order: UnitOrder): FigureGroup['lines'] {
  const shown = lengthShown(order);
  const widest = Math.max(...worked.steps.map((step) => step.stitches));
  const last = worked.steps.reduce<WorkedStep | null>(
    (top, step) => (top && top.rowsSoFar > step.rowsSoFar ? top : step),
    null,
  );
  const across = spreadOver(stitchGauge.summary, (gauge) => lengthOf(stitches(widest), gauge));
  const up = spreadOver(rowGauge.summary, (gauge) => (last ? lengthSoFar(last, gauge) : Fraction.zero));
  return [
    {label: 'Widest', cells: [`${widest}`, '', spreadWords(across, [stitchGauge.summary], shown), '']},
    {
      label: 'Whole length',
      cells: ['', `${last?.rowsSoFar ?? 0}`, '', spreadWords(up, [rowGauge.summary], shown)],
    },
  ];
}

/** Rows whose length is stated have it, the others that of the gauge. */
function lengthSoFar({rowsSoFar, stretches}: WorkedStep, gauge: Gauge<'rows'>): Fraction {
  const ownRows = stretches.reduce((sum, {from, to}) => sum + to - from, 0);
  const own = stretches.reduce<Fraction>((sum, {length}) => sum.plus(length), Fraction.zero);
  return own.plus(Fraction.ofInteger(rowsSoFar - ownRows).dividedBy(gauge));
}

/** The seams with the other pieces, or which of them do not meet. */
function joinLines(
  piece: PieceOfItem,
  against: string,
  find: (name: string) => Result<PieceOfItem>,
  order: UnitOrder,
): Result<FigureGroup['lines']> {
  const others: PieceOfItem[] = [];
  for (const name of against.split(/\s*(?:,|\band\b)\s*/)) {
    const other = find(name);
    if (!other.ok) return other;
    others.push(other.value);
  }
  const checks = joinPieces(piece, others);
  if (!checks.ok) return checks;
  const name = englishList(others.map((other) => other.name));
  const apart = checks.value.filter(({meets}) => !meets);
  if (apart.length > 0) return failure(...apart.map((check) => notMeeting(check, piece.name, name, order)));
  const shown = lengthShown(order);
  return success(
    checks.value.map(({what, one, other, off}) => ({
      label: `${capitalized(what)}, against ${name}`,
      cells: ['', '', `${shown(one)} to ${shown(other)}`, `off by ${formatLengthDifference(off, order)}`],
    })),
  );
}

function notMeeting(
  {what, one, other, off}: JoinCheck,
  name: string,
  against: string,
  order: UnitOrder,
): Problem {
  const shown = lengthShown(order);
  const isShort = off.compare(Fraction.zero) < 0;
  const [here, there] = what === 'cap and armhole' ? ['cap', 'armhole'] : [what, what];
  return {
    message: `the ${here} of \`${name}\` is \`${shown(one)}\` and the ${there} of \`${against}\` \`${shown(other)}\``,
    hint:
      what === 'cap and armhole'
        ? `Make the cap ${isShort ? 'higher or wider' : 'lower or narrower'}: it may be up to ${shown(capEase)} longer than the armhole, and not shorter.`
        : `Work ${isShort ? 'more' : 'fewer'} rows or steps there: they may differ by ${shown(seamTolerance)}.`,
    span: {start: 0, end: 0},
  };
}

function joinFormula(order: UnitOrder): string {
  const shown = lengthShown(order);
  return `Seams: lengths along the outline, mark to mark. They meet when they differ by no more than ${shown(seamTolerance)}; a cap may be up to ${shown(capEase)} longer than its armhole.`;
}

function rowLines(worked: WorkedPiece): readonly string[] {
  return [
    'In stockinette; a step that says rib is worked in rib over the same rows.',
    ...writePieceRows(worked).flatMap(({title, text, ending}) => [
      ...(title === null ? [] : [`${capitalized(title)}:`]),
      ...text.trimEnd().split('\n'),
      ...(ending === null ? [] : [ending]),
    ]),
  ];
}
