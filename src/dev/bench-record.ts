import * as z from 'zod';

/** What is measured together; each can be asked for by name. */
export const benchGroups = [
  'floors',
  'start-up',
  'check',
  'build',
  'reprint',
  'thousand',
  'preview',
  'citations',
  'knitting',
  'growth',
] as const;
export type BenchGroup = (typeof benchGroups)[number];

const amount = z.number().nonnegative();

const benchRow = z.strictObject({
  /** Short and steady: the history compares rows by it. */
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  what: z.string().min(1),
  /** What a ratio is a multiple of; null where the figure stands for itself. */
  against: z.string().nullable(),
  unit: z.enum(['×', 'ms']),
  /** The median; null when it could not be measured. */
  measured: amount.nullable(),
  /** The quarter and the three-quarter point of the single measurements; null when there are too few. */
  quartiles: z.tuple([amount, amount]).nullable(),
  /** The most that it may be; null where it is only reported. */
  target: amount.nullable(),
  runs: z.int().nonnegative(),
  /** How it came about, in words. */
  detail: z.string(),
});

/** One figure of a run. Less is better in all of them. */
export type BenchRow = z.infer<typeof benchRow>;

const machine = z.strictObject({
  processor: z.string(),
  cores: z.int().positive(),
  memory: z.string(),
  system: z.string(),
});

const load = z.strictObject({before: amount, after: amount});

const aboutRun = {
  date: z.iso.datetime(),
  /** Short hash; `+` behind it when files differed from it. */
  commit: z.string().min(1),
  machine,
  versions: z.record(z.string(), z.string()),
  /** Measurements to each median, where a row does not say otherwise. */
  runs: z.int().positive(),
  /** Processes that wanted a core, averaged over a minute. */
  load,
};

/** A whole run, as `--json` writes it. */
export const benchRun = z.strictObject({...aboutRun, rows: z.array(benchRow)});
export type BenchRun = z.infer<typeof benchRun>;

/** A run as the history keeps it: its figures by the id of their row. */
const historyEntry = z.strictObject({
  ...aboutRun,
  ratios: z.record(z.string(), z.strictObject({measured: amount, unit: z.enum(['×', 'ms'])})),
});

/** `tests/bench/history.json`: one entry a run, the oldest first. */
export const benchHistory = z.array(historyEntry);
export type BenchHistory = z.infer<typeof benchHistory>;

export type Verdict = 'reached' | 'missed' | 'reported' | 'not measured';

export function verdictOf({measured, target}: BenchRow): Verdict {
  if (measured === null) return 'not measured';
  if (target === null) return 'reported';
  return measured <= target ? 'reached' : 'missed';
}

/** `history` with `run` at its end. Rows that could not be measured are left out. */
export function withRun(history: BenchHistory, {rows, ...run}: BenchRun): BenchHistory {
  const ratios = rows.flatMap(({id, measured, unit}) => (measured === null ? [] : [[id, {measured, unit}]]));
  return [...history, {...run, ratios: Object.fromEntries(ratios)}];
}
