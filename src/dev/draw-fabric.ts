import {type NewLoop, readInstruction} from './draw-instructions.ts';

/** One loop of a drawn fabric. Lengths are in millimetres on the knitting; x runs right, y up. */
export interface Loop {
  readonly id: number;
  readonly row: number;
  readonly look: NewLoop['look'] | 'cast-on';
  readonly colour: string;
  readonly parents: readonly Loop[];
  readonly children: Loop[];
  /** The parent that lies on top in a decrease. */
  readonly top: Loop | null;
  readonly front: boolean;
  readonly twisted: boolean;
  readonly barred: boolean;
  readonly tall: boolean;
  /** How far a crossing carried the loop, in stitches to the right. */
  readonly travel: number;
  width: number;
  height: number;
  left: Loop | null;
  right: Loop | null;
  x: number;
  y: number;
}

export type Side = 'RS' | 'WS';
/** The colour of the loop at a place of a row, both counted from 0 at the left and the bottom. */
export type Colouring = string | ((column: number, row: number) => string);

export interface Fabric {
  readonly rows: Loop[][];
  readonly colouring: Colouring;
  /** Width of a stitch and height of a row in millimetres; both may change between rows. */
  stitch: number;
  row: number;
  /** How wide a purl is beside a knit: 1 in plain cloth, less in a rib. */
  readonly purlWidth: number;
  /** The loops on the needle, from left to right as seen from the right side. */
  live: Loop[];
  /** How many loops the next row passes over before its first instruction. */
  waiting: number;
  count: number;
}

export interface FabricPlan {
  readonly castOn: number;
  readonly colour: Colouring;
  /** Stitches and rows over 10 cm. */
  readonly gauge: readonly [number, number];
  readonly purlWidth?: number;
}

export function castOn(plan: FabricPlan): Fabric {
  const fabric: Fabric = {
    rows: [],
    colouring: plan.colour,
    stitch: 100 / plan.gauge[0],
    row: 100 / plan.gauge[1],
    purlWidth: plan.purlWidth ?? 1,
    live: [],
    waiting: 0,
    count: 0,
  };
  const loops = Array.from({length: plan.castOn}, (_, column) =>
    makeLoop(fabric, {look: 'cast-on', from: []}, [], column),
  );
  finishRow(fabric, loops);
  fabric.live = loops;
  return fabric;
}

/** Works one row. Loops left on the needle wait, as in a short row, and the next row begins beside them. */
export function work(fabric: Fabric, side: Side, text: string): void {
  const hand = side === 'RS' ? fabric.live.toReversed() : fabric.live;
  const waiting = hand.slice(0, fabric.waiting);
  let place = fabric.waiting;
  const made: Loop[] = [];
  for (const operation of readInstruction(text, hand.length - place)) {
    const taken = hand.slice(place, place + operation.takes);
    if (taken.length < operation.takes) throw new Error(`the row uses more stitches than there are: ${text}`);
    place += operation.takes;
    const crosses = operation.makes.some((loop) => loop.front);
    for (const [index, loop] of operation.makes.entries()) {
      const parents = loop.from.flatMap((from) => taken[from] ?? []);
      const step = crosses ? (loop.from[0] ?? 0) - index : 0;
      const column = side === 'RS' ? hand.length - 1 - made.length : made.length;
      made.push(makeLoop(fabric, seenFromRight(loop, side), parents, column, side === 'RS' ? step : -step));
    }
  }
  const rest = hand.slice(place);
  const order = [...waiting, ...made, ...rest];
  fabric.live = side === 'RS' ? order.reverse() : order;
  fabric.waiting = rest.length;
  finishRow(fabric, side === 'RS' ? made.reverse() : made);
}

/** Works the same rows again and again, sides taking turns from the right side on. */
export function workRows(fabric: Fabric, times: number, ...rows: readonly string[]): void {
  for (let time = 0; time < times; time++) {
    for (const [index, text] of rows.entries()) work(fabric, index % 2 === 0 ? 'RS' : 'WS', text);
  }
}

function seenFromRight(loop: NewLoop, side: Side): NewLoop {
  if (side === 'RS' || (loop.look !== 'knit' && loop.look !== 'purl') || loop.tall) return loop;
  return {...loop, look: loop.look === 'knit' ? 'purl' : 'knit'};
}

function makeLoop(
  fabric: Fabric,
  loop: Omit<NewLoop, 'look'> & {readonly look: Loop['look']},
  parents: readonly Loop[],
  column: number,
  travel = 0,
): Loop {
  const row = fabric.rows.length;
  const made: Loop = {
    id: fabric.count++,
    row,
    look: loop.look,
    colour: typeof fabric.colouring === 'string' ? fabric.colouring : fabric.colouring(column, row),
    parents,
    children: [],
    top: loop.top === undefined ? null : (parents[loop.top] ?? null),
    front: loop.front ?? false,
    twisted: loop.twisted ?? false,
    barred: loop.barred ?? false,
    tall: loop.tall ?? false,
    travel,
    width: fabric.stitch * (loop.look === 'purl' ? fabric.purlWidth : 1),
    height: fabric.row,
    left: null,
    right: null,
    x: 0,
    y: parents.length === 0 ? Number.NaN : mean(parents.map((parent) => parent.y)) + fabric.row,
  };
  for (const parent of parents) parent.children.push(made);
  return made;
}

function finishRow(fabric: Fabric, loops: Loop[]): void {
  const based = loops.flatMap((loop) => loop.parents);
  const centre = based.length === 0 ? 0 : mean(based.map((loop) => loop.x));
  const heights = loops.map((loop) => loop.y).filter((y) => !Number.isNaN(y));
  let edge = centre - loops.reduce((sum, loop) => sum + loop.width, 0) / 2;
  for (const [index, loop] of loops.entries()) {
    loop.left = loops[index - 1] ?? null;
    loop.right = loops[index + 1] ?? null;
    loop.x = edge + loop.width / 2;
    if (Number.isNaN(loop.y)) loop.y = heights.length === 0 ? 0 : mean(heights);
    edge += loop.width;
  }
  fabric.rows.push(loops);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
