import {plural} from '../../support/plural.ts';
import type {Problem} from '../../support/result.ts';
import type {Gauge} from '../units.ts';
import {divideRun, partsNamed, unknownPart, whichPart} from './divide-run.ts';
import type {PieceStep, PlacedStep, WrittenPiece} from './piece-syntax.ts';
import {planLines} from './plan-lines.ts';
import {finishRun, type RunBuilder, startRun, type Trouble, widen, workRows} from './run-builder.ts';
import type {Panel, PieceMark, Stretch, WorkedPiece, WorkedStep} from './worked-piece.ts';

interface PanelBuilder {
  readonly isRound: boolean;
  readonly rowsBefore: number;
  readonly base: RunBuilder;
  readonly parts: RunBuilder[];
  readonly stretches: Stretch[];
}

/** The piece on the needles. */
interface Work {
  readonly rowGauge: Gauge<'rows'> | null;
  readonly panels: PanelBuilder[];
  readonly marks: PieceMark[];
  readonly steps: WorkedStep[];
  readonly problems: Problem[];
  isRound: boolean;
  /** The runs that the next line is worked on; none between a divide and the name of a part. */
  active: readonly RunBuilder[];
}

/**
 * Works a piece step by step and proves each count: no step takes stitches that are not there, parts of a divide add up,
 * edges worked at the same time take as many rows, and at the end nothing is left on the needle. Lengths become rows
 * by `rowGauge`, to the nearest whole row, halves up. Never throws. After a step that cannot be worked its run is left,
 * so that one mistake is one problem.
 */
export function workPiece({steps}: WrittenPiece, rowGauge: Gauge<'rows'> | null): WorkedPiece {
  const work: Work = {rowGauge, panels: [], marks: [], steps: [], problems: [], isRound: false, active: []};
  for (let at = 0; at < steps.length; ) {
    const lines = sameTime(steps, at);
    workLines(work, lines);
    at += lines.length;
  }
  const last = steps.at(-1);
  if (last) checkFinished(work, last);
  const panels = work.panels.map(({isRound, stretches, base, parts}): Panel => {
    return {isRound, stretches, base: finishRun(base), parts: parts.map(finishRun)};
  });
  return {panels, marks: work.marks, steps: work.steps, problems: withoutEcho(work.problems)};
}

/** A line, or all the lines along edges that follow one another without naming an edge twice. */
function sameTime(steps: readonly PlacedStep[], at: number): readonly PlacedStep[] {
  const edges = new Set<string>();
  let end = at;
  for (let line = steps[end]; line?.step.kind === 'along' && !edges.has(line.step.where); line = steps[end]) {
    edges.add(line.step.where);
    end += 1;
  }
  return steps.slice(at, Math.max(end, at + 1));
}

function workLines(work: Work, lines: readonly PlacedStep[]): void {
  const [line] = lines;
  if (!line) return;
  const {step} = line;
  const panel = work.panels.at(-1);
  if (step.kind === 'way') changeWay(work, step.isRound);
  else if (step.kind === 'cast on') castOn(work, line, step.count);
  else if (!panel) complain(work, line, nothingCastOn);
  else if (step.kind === 'on part') goOn(work, panel, line, step.name);
  else if (work.active.length === 0) loseParts(work, panel, line, whichPart(panel.parts));
  else if (step.kind === 'divide') divide(work, panel, line, step);
  else if (step.kind === 'mark') mark(work, panel, line, step.name);
  else {
    for (const run of work.active) {
      const trouble = run.isBroken ? null : workOn(work, panel, run, lines);
      if (!trouble) continue;
      run.isBroken = true;
      complain(work, trouble.line, trouble.trouble);
    }
    record(work, lines);
  }
}

function workOn(work: Work, panel: PanelBuilder, run: RunBuilder, lines: readonly PlacedStep[]) {
  const [line] = lines;
  if (!line) return null;
  if (run.ending !== null) return {line, trouble: nothingLeft};
  const {step} = line;
  if (step.kind === 'add') {
    if (step.how === 'pick up' && panel.parts.length === 0) startPanel(work, run.stitches + step.count);
    else widen(run, step.count);
    return null;
  }
  if (step.kind === 'end') {
    const trouble = endRun(run, panel.isRound, step);
    return trouble && {line, trouble};
  }
  const plan = planLines(lines, run, {...panel, rowGauge: work.rowGauge});
  if ('trouble' in plan) return plan;
  const from = run.row;
  const trouble = workRows(run, plan.left, plan.right);
  const isNew = panel.stretches.every((stretch) => stretch.from !== from);
  if (step.kind === 'work' && step.measuring && isNew) {
    panel.stretches.push({from, to: run.row, length: step.measuring.millimetres});
  }
  return trouble && {line, trouble};
}

function endRun(run: RunBuilder, isRound: boolean, {how, count}: PieceStep & {kind: 'end'}): Trouble | null {
  const {stitches} = run;
  if (count === null || count === stitches) {
    run.ending = how;
    return null;
  }
  if (how === 'held' && isRound && count < stitches) {
    widen(run, -count);
    return null;
  }
  return {
    message: `\`${plural(stitches, 'stitch', 'stitches')}\` ${stitches === 1 ? 'is' : 'are'} left, not \`${count}\``,
    hint:
      count < stitches
        ? 'Use `divide:` to go on with the others, or bind off at an edge.'
        : 'Check the counts of the steps before it.',
  };
}

function changeWay(work: Work, isRound: boolean): void {
  const panel = work.panels.at(-1);
  work.isRound = isRound;
  if (!panel || panel.isRound === isRound || panel.parts.length > 0) return;
  startPanel(work, panel.base.stitches);
}

function castOn(work: Work, line: PlacedStep, count: number): void {
  if (work.panels.length > 0 || count === 0) {
    complain(work, line, count === 0 ? castOnNothing : castOnTwice);
    return;
  }
  startPanel(work, count);
  record(work, [line]);
}

/** A panel that nothing was worked on gives way to the new one. */
function startPanel(work: Work, count: number): void {
  const before = work.panels.at(-1);
  const rowsBefore = before ? before.rowsBefore + before.base.row : 0;
  if (before?.base.rows.length === 0) work.panels.pop();
  const base = startRun(-count, count, 0);
  work.panels.push({isRound: work.isRound, rowsBefore, base, parts: [], stretches: []});
  work.active = [base];
}

function divide(
  work: Work,
  panel: PanelBuilder,
  line: PlacedStep,
  {parts}: PieceStep & {kind: 'divide'},
): void {
  const {base} = panel;
  if (base.isBroken) return;
  const divided = divideRun(base, panel.isRound, panel.parts.length > 0, parts);
  if ('message' in divided) {
    base.isBroken = true;
    complain(work, line, divided);
    return;
  }
  record(work, [line]);
  panel.parts.push(...divided);
  work.active = [];
}

function goOn(work: Work, panel: PanelBuilder, line: PlacedStep, name: string | null): void {
  const found = partsNamed(panel.parts, name);
  if (found.length > 0) work.active = found;
  else if (!panel.base.isBroken) loseParts(work, panel, line, unknownPart(panel.parts, name));
}

/** Which part is meant is not known, so that nothing after it can be judged. */
function loseParts(work: Work, {parts}: PanelBuilder, line: PlacedStep, trouble: Trouble): void {
  complain(work, line, trouble);
  for (const part of parts) part.isBroken = true;
  if (parts.length > 0) work.active = parts;
}

function mark(work: Work, panel: PanelBuilder, line: PlacedStep, name: string): void {
  const index = work.panels.indexOf(panel);
  for (const run of work.active) {
    const found = panel.parts.indexOf(run);
    const part = found < 0 ? null : found;
    const isTwice = work.marks.some(
      (other) => other.name === name && (other.panel !== index || other.part === part),
    );
    if (isTwice) complain(work, line, markedTwice(name));
    else work.marks.push({name, panel: index, part, row: run.row, leftX: run.leftX, rightX: run.rightX});
  }
}

/** One line of the result for all parts that stand alike, else one for each. */
function record({active, panels, steps, isRound}: Work, lines: readonly PlacedStep[]): void {
  const runs = active.filter((run) => !run.isBroken);
  const [first] = runs;
  const isAlike =
    runs.length > 1 && runs.every(({stitches, row}) => stitches === first?.stitches && row === first.row);
  const stretches = panels.flatMap((panel) => panel.stretches);
  for (const {name, stitches, row, ending} of isAlike ? runs.slice(0, 1) : runs) {
    const rowsSoFar = (panels.at(-1)?.rowsBefore ?? 0) + row;
    const part = isAlike ? 'each side' : name;
    steps.push({lines, part, stitches: ending === 'bound off' ? 0 : stitches, rowsSoFar, stretches, isRound});
  }
}

function checkFinished(work: Work, line: PlacedStep): void {
  const panel = work.panels.at(-1);
  if (!panel || panel.base.isBroken) return;
  for (const run of panel.parts.length > 0 ? panel.parts : [panel.base]) {
    if (run.isBroken || run.ending !== null) continue;
    const where = run.name === null ? '' : ` of \`${run.name}\``;
    complain(work, line, {
      message: `\`${plural(run.stitches, 'stitch', 'stitches')}\`${where} ${run.stitches === 1 ? 'is' : 'are'} still on the needle at the end`,
      hint: 'End with `bind off`, `put all on a holder`, `draw up` or `graft`.',
    });
  }
}

function complain({problems}: Work, {span}: PlacedStep, trouble: Trouble): void {
  problems.push({...trouble, span});
}

/** The same mistake on both sides is one mistake. */
function withoutEcho(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.filter(({span, message}) => {
    const key = `${span.start} ${message}`;
    return !seen.has(key) && seen.add(key);
  });
}

function markedTwice(name: string): Trouble {
  return {message: `\`${name}\` is marked twice`, hint: 'Give each mark a name of its own.'};
}

const nothingCastOn: Trouble = {
  message: 'nothing is on the needle yet',
  hint: 'Begin with a line such as `cast on 98`.',
};

const castOnTwice: Trouble = {
  message: 'the piece is cast on already',
  hint: 'Write `add 4 cast on` for stitches that come later, or a block of its own for another piece.',
};

const castOnNothing: Trouble = {
  message: 'nothing is cast on',
  hint: 'Write how many stitches, such as `cast on 98`.',
};

const nothingLeft: Trouble = {
  message: 'no stitch is left on the needle',
  hint: 'Leave the line out, or check the steps before it.',
};
