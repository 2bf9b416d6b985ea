import {nearestName} from '../../support/nearest-name.ts';
import {failure, type Problem, type Result, success} from '../../support/result.ts';
import {pieceForms, whereNamed} from './piece-forms.ts';
import type {DividedPart, EdgeStep, PieceStep, Where} from './piece-syntax.ts';

/** Reads one line of a `piece` block. Never throws; the spans of problems are empty. */
export function readPieceStep(line: string): Result<PieceStep> {
  const text = line.trim().replace(/\.$/, '').replace(/\s+/g, ' ');
  const along =
    /^(?:at the same time,? )?(?:at|along) (?:the )?(?<where>[a-z]+(?: [a-z]+)?)\s*:\s*(?<rest>.+)$/i;
  const groups = along.exec(text)?.groups;
  if (groups) return readAlong(groups.where ?? '', groups.rest ?? '');
  if (/^divide\b/i.test(text)) return readDivide(text);
  for (const {pattern, make} of pieceForms) {
    const found = pattern.exec(text);
    if (found) return make(found.groups ?? {});
  }
  return failure(unknownStep(text));
}

/** Several steps of one edge between semicolons. */
function readAlong(edge: string, rest: string): Result<PieceStep> {
  const where = whereNamed(edge);
  if (where === null) return failure(unknownEdge(edge));
  const steps: EdgeStep[] = [];
  for (const part of rest.split(/\s*;\s*/)) {
    const result = readPieceStep(part.replace(/^(bind off \d+)$/i, '$1 at this edge'));
    if (!result.ok) return result;
    const {value: step} = result;
    if (!isEdgeStep(step) || step.kind === 'bind off at beginnings') return failure(notAlong(part));
    steps.push('where' in step ? {...step, where: narrowed(step.where, where)} : step);
  }
  return success({kind: 'along', where, steps});
}

/** Where no edge is written behind the step, it is that of the line. */
function narrowed(own: Where, line: Where): Where {
  return own === 'each edge' ? line : own;
}

function isEdgeStep(step: PieceStep): step is EdgeStep {
  return (
    step.kind === 'work' ||
    step.kind === 'work length' ||
    step.kind === 'shape' ||
    step.kind === 'steps' ||
    step.kind === 'bind off at edge' ||
    step.kind === 'bind off at beginnings'
  );
}

/** `divide: 56 left, 2 on a holder, 56 right`. */
function readDivide(text: string): Result<PieceStep> {
  const parts: DividedPart[] = [];
  const list = text.replace(/^divide\s*:?\s*/i, '');
  for (const written of list.split(/\s*,\s*/)) {
    const groups =
      /^(?<count>\d{1,5}) (?:sts? |stitch(?:es)? )?(?:for (?:the )?)?(?<name>[\p{L} ]{1,40})$/u.exec(
        written,
      )?.groups;
    if (!groups) return failure(divideForm(written));
    const {count = '', name = ''} = groups;
    const isWaiting = /^(?:on|to|put on) an? (?:holder|pin|thread)$|^(?:bound off|bind off|held)$/i.test(
      name.trim(),
    );
    parts.push({
      name: isWaiting
        ? null
        : name
            .trim()
            .toLowerCase()
            .replace(/ side$/, ''),
      count: Number(count),
    });
  }
  const names = parts.flatMap(({name}) => (name === null ? [] : [name]));
  if (names.length < 2 || new Set(names).size < names.length) return failure(divideForm(list));
  return success({kind: 'divide', parts});
}

const nowhere = {start: 0, end: 0};

function divideForm(written: string): Problem {
  return {
    message: `\`${written}\` does not say how the stitches are divided`,
    hint: 'Write each part with a name of its own, in the order in which the right-side row comes to them, such as `divide: 56 left, 2 on a holder, 56 right`.',
    span: nowhere,
  };
}

function unknownEdge(edge: string): Problem {
  const near = nearestName(edge, [
    'neck edge',
    'side edge',
    'armhole edge',
    'each edge',
    'left edge',
    'right edge',
  ]);
  return {
    message: `\`${edge}\` is no edge of a piece`,
    hint: `Write \`at the ${near ?? 'neck edge'}:\`, or \`armhole edge\`, \`side edge\`, \`each edge\`.`,
    span: nowhere,
  };
}

function notAlong(part: string): Problem {
  return {
    message: `\`${part}\` cannot be worked along one edge`,
    hint: 'Write `bind off 8`, `decrease 1 every other row 8 times` or `work 52 rows` there, with semicolons between.',
    span: nowhere,
  };
}

/** The form that shares the most words with what was written stands in the hint. */
function unknownStep(text: string): Problem {
  const words = new Set(
    text
      .toLowerCase()
      .split(/\W+/)
      .filter((word) => !/^\d*$/.test(word)),
  );
  const known = new Set(
    pieceForms.flatMap(({example}) => example.split(/\W+/)).filter((word) => /\D/.test(word)),
  );
  const meant = [...words].map((word) => nearestName(word, known) ?? word);
  const scored = pieceForms.map(({example}) => ({
    example,
    score: meant.filter((word) => example.split(/\W+/).includes(word)).length,
  }));
  const best = scored.reduce((most, form) => (form.score > most.score ? form : most), {
    example: 'work 40 rows',
    score: 0,
  });
  return {
    message: `\`${text.length > 60 ? `${text.slice(0, 60)}…` : text}\` is no step known here`,
    hint: `Write it like \`${best.example}\`.`,
    span: nowhere,
  };
}
