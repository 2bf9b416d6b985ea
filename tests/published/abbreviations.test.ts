import {readFileSync} from 'node:fs';
import {describe, expect, it} from 'vitest';
import {expandRow} from '../../src/knitting/rows/expand-row.ts';
import {proveRows} from '../../src/knitting/rows/prove-rows.ts';
import {readRows} from '../../src/knitting/rows/read-rows.ts';

// data/abbreviations.json: 126 abbreviations of the trade with the stitches they use and make, from published lists
// that agree, and its own `source` column.
interface Abbreviation {
  readonly abbr: string;
  readonly consumes: number | null;
  readonly produces: number | null;
  readonly kind: string;
}

// The shape is that of the file itself.
const {entries: abbreviations} = JSON.parse(
  readFileSync(new URL('data/abbreviations.json', import.meta.url), 'utf8'),
) as {readonly entries: readonly Abbreviation[]};

/** How an abbreviation that cannot stand alone stands in a row, with what then stands around it. */
const inContext: Readonly<
  Record<string, {readonly text: string; readonly uses: number; readonly makes: number}>
> = {
  'yf (before k)': {text: 'yf, k1', uses: 1, makes: 1},
  yfwd: {text: 'yfwd, k1', uses: 1, makes: 1},
  'yf (before p or sl)': {text: 'yf, p1', uses: 1, makes: 1},
  tbl: {text: 'k1 tbl', uses: 1, makes: 1},
  wyif: {text: 'sl1 wyif', uses: 1, makes: 1},
  wyib: {text: 'sl1 wyib', uses: 1, makes: 1},
  kwise: {text: 'sl1 kwise', uses: 1, makes: 1},
  pwise: {text: 'sl1 pwise', uses: 1, makes: 1},
  sm: {text: 'pm, turn, sm, turn', uses: 0, makes: 0},
  slm: {text: 'pm, turn, slm, turn', uses: 0, makes: 0},
  rm: {text: 'pm, turn, rm, turn', uses: 0, makes: 0},
};

/** `psso` takes a stitch that was already made: the group is counted. */
const groups: Readonly<Record<string, readonly [string, number, number]>> = {
  psso: ['sl1, k1, psso', 2, 1],
  p2sso: ['sl2, k1, p2sso', 3, 1],
  'CO n': ['CO 3', 0, 3],
  'BO n': ['BO 3', 3, 0],
  'cast off n': ['cast off 3', 3, 0],
};

const singles = abbreviations.flatMap((entry) =>
  entry.abbr.split(' / ').map((name): [string, Abbreviation] => [name, entry]),
);
const withEffect = singles.filter(([, {kind}]) => kind !== 'general');
const general = singles.filter(([, {kind}]) => kind === 'general');

describe('the published abbreviations', () => {
  it('are all here', () => {
    expect(abbreviations).toHaveLength(126);
  });

  it.each(withEffect)('%s uses and makes what the lists say', (name, {consumes, produces}) => {
    const group = groups[name];
    if (group) {
      const [text, uses, makes] = group;
      expect(effectOf(text)).toEqual({uses, makes});
      return;
    }
    const context = inContext[name] ?? {text: name, uses: 0, makes: 0};
    expect(effectOf(context.text)).toEqual({
      uses: (consumes ?? 0) + context.uses,
      makes: (produces ?? 0) + context.makes,
    });
  });

  // `dec` and `inc` alone are a decrease and an increase, as the file's own note says.
  it.each(general.filter(([name]) => name !== 'dec' && name !== 'inc'))(
    '%s has no effect on the count',
    (name) => {
      const {uses, makes} = effectOf(name, {mayBeUnknown: true});
      expect(makes - uses).toBe(0);
    },
  );

  it.each([
    ['dec', {uses: 2, makes: 1}],
    ['inc', {uses: 1, makes: 2}],
  ])('bare %s is one of its own', (name, effect) => {
    expect(effectOf(name)).toEqual(effect);
  });
});

/** Stitches used and made between five stitches before and the rest of the row behind. */
function effectOf(text: string, {mayBeUnknown = false} = {}) {
  const block = `stitches: 40\nreading: bind-off loop counted\nRow 1: k5, ${text}, k to end.`;
  const {pattern, problems} = readRows(block);
  const unread = problems.filter(({message}) => !message.includes('worked differently in every pattern'));
  if (!mayBeUnknown) expect(unread).toEqual([]);
  const row = proveRows(pattern, {isPlanned: true}).sizes[0]?.rows[0];
  const first = row?.row.steps[0];
  const last = row?.row.steps.at(-1);
  let [uses, makes] = [0, 0];
  for (const operation of row ? expandRow(row) : []) {
    if (operation.step === first || operation.step === last) continue;
    uses += operation.uses;
    makes += operation.makes;
  }
  return {uses, makes};
}
