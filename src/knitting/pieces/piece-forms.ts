import {type Result, success} from '../../support/result.ts';
import {parseLength} from '../quantity.ts';
import type {Ending, PieceStep, Where} from './piece-syntax.ts';

export type Groups = Readonly<Record<string, string | undefined>>;

/** One way to write a step: an example for hints, and how it is read. */
interface PieceForm {
  readonly example: string;
  readonly pattern: RegExp;
  make(groups: Groups): Result<PieceStep>;
}

const stitches = '(?:sts?|stitch(?:es)?)';
const count = `(?<count>\\d{1,5})(?: ${stitches})?`;
const row = '(?:rows?|rounds?|rnds?)';
const interval = `(?:(?<next>on the next and )?(?:on )?every (?<every>(?:other|alternate|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|[1-9]\\d{0,2}(?:st|nd|rd|th)) )?${row})`;
const times = '(?:(?<times>\\d{1,4}) times|(?<word>once|twice))';
const edge =
  '(?:at (?:the )?(?<where>(?:each|both|neck|inner|side|outer|armhole|left|right|this)(?: (?:edge|end|side)s?)?)|(?<evenly>evenly))';

/** Ordered: the first that fits the whole line is taken. */
export const pieceForms: readonly PieceForm[] = [
  form('cast on 98', `cast on ${count}`, (g) => ({kind: 'cast on', count: number(g.count)})),
  form('start with 14', `start with ${count}`, (g) => ({kind: 'cast on', count: number(g.count)})),
  form('in the round', '(?:work |join |knit )?in the round', () => ({kind: 'way', isRound: true})),
  form('back and forth', '(?:work |knit )?(?:back and forth|flat)', () => ({kind: 'way', isRound: false})),
  form('work 40 rows', `work (?:even )?(?<rows>\\d{1,4}) ${row}(?: even)?`, (g) => ({
    kind: 'work',
    rows: number(g.rows),
    measuring: null,
  })),
  {
    example: 'work 20 rows, measuring 6 cm',
    pattern: new RegExp(`^work (?<rows>\\d{1,4}) ${row}(?: in [a-z]+)?, measuring (?<length>.+)$`, 'iu'),
    make(g) {
      const length = parseLength(g.length ?? '');
      return length.ok ? success({kind: 'work', rows: number(g.rows), measuring: length.value}) : length;
    },
  },
  lengthForm(
    'work to 36 cm',
    'work (?:even )?(?:to|until) (?<length>\\S+.*?)(?: from (?:the )?(?:cast-on|start))?',
    true,
  ),
  lengthForm('work 6 cm', 'work (?:even )?(?<length>(?:\\d|[½¼¾.])[^;]*?)(?: even)?', false),
  form(
    'decrease 1 at each edge every 4th row 6 times',
    `(?<change>increase|decrease|inc|dec) ${count}(?: ${edge})?,? ${interval},? ${times}`,
    shape,
  ),
  form(
    'decrease 8 evenly',
    `(?<change>increase|decrease|inc|dec) ${count} ${edge}(?: on the next ${row})?`,
    shape,
  ),
  form(
    'bind off 5 at the beginning of the next 2 rows',
    `bind off ${count} at the beginning of the next (?:(?<rows>\\d{1,3}) )?rows?`,
    (g) => ({kind: 'bind off at beginnings', count: number(g.count), rows: number(g.rows ?? '1')}),
  ),
  form(
    'bind off in steps 8, 8, 9 at each edge',
    `bind off in steps (?<steps>${list()})(?: ${edge})?`,
    (g) => ({
      kind: 'steps',
      how: 'bind off',
      steps: numbers(g.steps),
      where: whereOf(g),
    }),
  ),
  form(
    'short rows in steps 8, 8, 9 at each edge',
    `short rows in steps (?<steps>${list()})(?: ${edge})?`,
    (g) => ({
      kind: 'steps',
      how: 'short rows',
      steps: numbers(g.steps),
      where: whereOf(g),
    }),
  ),
  form('bind off 8 at the neck edge', `bind off ${count} ${edge}`, (g) => ({
    kind: 'bind off at edge',
    count: number(g.count),
    where: whereOf(g),
  })),
  ending('bind off', 'bind off(?: all)?', 'bound off'),
  ending('put 36 on a holder', 'put(?: all)?', 'held', ' on (?:an? )?(?:holder|pin|thread)'),
  ending('draw up 8', 'draw(?: up)?(?: together)?', 'drawn up'),
  ending('graft 12', 'graft', 'grafted'),
  form('add 4 stitches cast on', `add ${count} cast on`, (g) => added('cast on', g)),
  form('take up 32 from the holder', `take up ${count} from (?:the |a )?(?:holder|pin|thread)`, (g) =>
    added('take up', g),
  ),
  form('pick up 16', `pick up(?: and knit)? ${count}`, (g) => added('pick up', g)),
  form('mark the underarm', 'mark (?:the )?(?<name>\\p{L}[\\p{L} ]{0,30})', (g) => ({
    kind: 'mark',
    name: (g.name ?? '').toLowerCase(),
  })),
  form('each side:', '(?:each side|both sides|each part)(?:, reversing (?:the )?shaping)?:', () => ({
    kind: 'on part',
    name: null,
  })),
  form('left side:', '(?:the )?(?<name>\\p{L}[\\p{L} ]{0,30}?)(?: side)?:', (g) => ({
    kind: 'on part',
    name: (g.name ?? '').toLowerCase(),
  })),
];

/** `neck edge`, `each end`; null for words that name no edge. */
export function whereNamed(text: string): Where | null {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/ (?:edge|end|side)s?$/, '');
  return edgeWords.get(word) ?? null;
}

const edgeWords: ReadonlyMap<string, Where> = new Map(
  Object.entries<Where>({
    each: 'each edge',
    both: 'each edge',
    this: 'each edge',
    neck: 'neck',
    inner: 'neck',
    side: 'side',
    outer: 'side',
    armhole: 'side',
    left: 'left',
    right: 'right',
  }),
);

function form(example: string, source: string, make: (groups: Groups) => PieceStep): PieceForm {
  return {example, pattern: new RegExp(`^${source}$`, 'iu'), make: (groups) => success(make(groups))};
}

function lengthForm(example: string, source: string, isTotal: boolean): PieceForm {
  return {
    example,
    pattern: new RegExp(`^${source}$`, 'iu'),
    make(groups) {
      const length = parseLength(groups.length ?? '');
      return length.ok ? success({kind: 'work length', length: length.value, isTotal}) : length;
    },
  };
}

function ending(example: string, words: string, how: Ending, behind = ''): PieceForm {
  return form(
    example,
    `${words}(?: (?:the )?(?:last |remaining )?(?<count>\\d{1,5})?(?: ?${stitches})?)?${behind}`,
    (g) => ({
      kind: 'end',
      how,
      count: g.count === undefined ? null : Number(g.count),
    }),
  );
}

function shape(g: Groups): PieceStep {
  return {
    kind: 'shape',
    change: /^inc/i.test(g.change ?? '') ? 'increase' : 'decrease',
    count: number(g.count),
    where: whereOf(g),
    every: everyOf(g.every?.trim().toLowerCase()),
    times: g.word ? (g.word.toLowerCase() === 'twice' ? 2 : 1) : number(g.times ?? '1'),
    isOnNext: g.next !== undefined || (g.times === undefined && g.word === undefined),
  };
}

function whereOf(g: Groups): Where {
  return g.evenly ? 'evenly' : (whereNamed(g.where ?? 'each') ?? 'each edge');
}

const ordinals = [
  '',
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

function everyOf(word: string | undefined): number {
  if (word === undefined || word === '') return 1;
  if (word === 'other' || word === 'alternate') return 2;
  const ordinal = ordinals.indexOf(word);
  return ordinal > 0 ? ordinal : Math.max(1, Number.parseInt(word, 10) || 1);
}

function added(how: 'cast on' | 'take up' | 'pick up', g: Groups): PieceStep {
  return {kind: 'add', how, count: number(g.count)};
}

function number(text: string | undefined): number {
  return Number(text ?? '0');
}

function numbers(text: string | undefined): readonly number[] {
  return [...(text ?? '').matchAll(/\d+/g)].map(([digits]) => Number(digits));
}

function list(): string {
  return '\\d{1,4}(?:(?:, | and )\\d{1,4}){0,19}';
}
