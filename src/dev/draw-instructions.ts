/** What one instruction does when it is drawn: how many loops it takes, and how the new loops come from them. */
export interface Operation {
  readonly takes: number;
  /** The new loops in working order; `from` counts the taken loops in working order. */
  readonly makes: readonly NewLoop[];
}

export interface NewLoop {
  readonly look: 'knit' | 'purl' | 'over' | 'hidden';
  readonly from: readonly number[];
  /** Which of the loops taken together lies on top, by its place in `from`. */
  readonly top?: number;
  /** Held in front in a crossing. */
  readonly front?: boolean;
  /** The foot of the loop is twisted, as in a make-one. */
  readonly twisted?: boolean;
  /** A bar lies across the foot, as in the second loop of a bar increase. */
  readonly barred?: boolean;
  /** Slipped: the loop below is drawn up over two rows. */
  readonly tall?: boolean;
}

const knit = (...from: number[]): NewLoop => ({look: 'knit', from});
const purl = (...from: number[]): NewLoop => ({look: 'purl', from});
const inFront = (...from: number[]): NewLoop => ({look: 'knit', from, front: true});

/** Written as seen from the side that faces the knitter; on a wrong-side row knit and purl change places. */
const operations: Readonly<Record<string, Operation>> = {
  k: {takes: 1, makes: [knit(0)]},
  p: {takes: 1, makes: [purl(0)]},
  h: {takes: 1, makes: [{look: 'hidden', from: [0]}]},
  sl: {takes: 1, makes: [{look: 'knit', from: [0], tall: true}]},
  bo: {takes: 1, makes: []},
  yo: {takes: 0, makes: [{look: 'over', from: []}]},
  k2tog: {takes: 2, makes: [{...knit(0, 1), top: 1}]},
  ssk: {takes: 2, makes: [{...knit(0, 1), top: 0}]},
  p2tog: {takes: 2, makes: [{...purl(0, 1), top: 1}]},
  k3tog: {takes: 3, makes: [{...knit(0, 1, 2), top: 2}]},
  sk2p: {takes: 3, makes: [{...knit(0, 1, 2), top: 0}]},
  s2kp: {takes: 3, makes: [{...knit(0, 1, 2), top: 1}]},
  kfb: {takes: 1, makes: [knit(0), {look: 'knit', from: [0], barred: true}]},
  m1: {takes: 0, makes: [{look: 'knit', from: [], twisted: true}]},
  m1p: {takes: 0, makes: [{look: 'purl', from: []}]},
  rli: {takes: 1, makes: [knit(0), knit(0)]},
  '2/2lc': {takes: 4, makes: [knit(2), knit(3), inFront(0), inFront(1)]},
  '2/2rc': {takes: 4, makes: [inFront(2), inFront(3), knit(0), knit(1)]},
  '2/1lpc': {takes: 3, makes: [purl(2), inFront(0), inFront(1)]},
  '2/1rpc': {takes: 3, makes: [inFront(1), inFront(2), purl(0)]},
  lt: {takes: 2, makes: [knit(1), inFront(0)]},
  rt: {takes: 2, makes: [inFront(1), knit(0)]},
};

/**
 * Reads `k3 9(yo k2tog k2) k*` for a needle that holds `available` loops: a number after `k`, `p` or `bo` repeats it, one
 * before a bracket repeats the bracket, and `*` fills what the rest leaves over. Throws `Error` for a word it does not know.
 */
export function readInstruction(text: string, available: number): readonly Operation[] {
  const words = expandBrackets(text).split(' ').filter(Boolean);
  const fixed = words.filter((word) => !word.endsWith('*')).flatMap(readWord);
  const left = available - fixed.reduce((sum, operation) => sum + operation.takes, 0);
  return words.flatMap((word) =>
    word.endsWith('*') ? Array.from({length: left}, () => operationNamed(word.slice(0, -1))) : readWord(word),
  );
}

function expandBrackets(text: string): string {
  return text.replace(/(\d+)\(([^()]*)\)/g, (_, times: string, inner: string) =>
    `${inner} `.repeat(Number(times)),
  );
}

function readWord(word: string): readonly Operation[] {
  const counted = /^(k|p|bo)(\d+)$/.exec(word);
  if (counted?.[1] === undefined) return [operationNamed(word)];
  const operation = operationNamed(counted[1]);
  return Array.from({length: Number(counted[2])}, () => operation);
}

function operationNamed(name: string): Operation {
  const operation = operations[name];
  if (operation === undefined) throw new Error(`no such instruction to draw: ${name}`);
  return operation;
}
