/**
 * Works a row of the small language that `writeRow` writes, stitch by stitch, without the reader in src: what each step
 * takes from the left needle and leaves on the right one, as the trade's abbreviation lists define it.
 */
const effects: Readonly<Record<string, readonly [uses: number, makes: number]>> = {
  k2tog: [2, 1],
  kfb: [1, 2],
  m1: [0, 1],
  yo: [0, 1],
  pb: [1, 1],
  pm: [0, 0],
};

export interface WorkedRow {
  readonly uses: number;
  readonly makes: number;
  /** Every step in order, repeats unfolded. */
  readonly steps: readonly string[];
}

export function workRow(written: string): WorkedRow {
  const {steps, rest} = readSteps(written.toLowerCase().replace(/\.$/, ''));
  if (rest !== '') throw new Error(`not read: ${rest}`);
  let [uses, makes] = [0, 0];
  for (const step of steps) {
    const [used, made] = effectOf(step);
    uses += used;
    makes += made;
  }
  return {uses, makes, steps};
}

function effectOf(step: string): readonly [number, number] {
  const known = effects[step];
  if (known) return known;
  const [, word = '', digits = ''] = /^(k|p|bind off |cast on )(\d+)$/.exec(step) ?? [];
  const count = Number(digits);
  if (word === 'k' || word === 'p') return [count, count];
  if (word === 'bind off ') return [count, 0];
  if (word === 'cast on ') return [0, count];
  throw new Error(`not a step: ${step}`);
}

function readSteps(text: string): {steps: string[]; rest: string} {
  const steps: string[] = [];
  let rest = text;
  for (;;) {
    rest = rest.replace(/^,? ?/, '');
    const star = /^\*(.*?); rep from \* (\d+) more times?/.exec(rest);
    const bracket = rest.startsWith('[');
    if (star) {
      const inner = readSteps(star[1] ?? '').steps;
      for (let time = 0; time <= Number(star[2]); time++) steps.push(...inner);
      rest = rest.slice(star[0].length);
    } else if (bracket) {
      const inner = readSteps(rest.slice(1));
      const [close = '', times = ''] = /^\] (\d+) times?/.exec(inner.rest) ?? [];
      if (close === '') throw new Error(`no end of bracket: ${inner.rest}`);
      for (let time = 0; time < Number(times); time++) steps.push(...inner.steps);
      rest = inner.rest.slice(close.length);
    } else {
      const [word = ''] = /^[^,\][;]+/.exec(rest) ?? [];
      if (word === '') return {steps, rest};
      steps.push(word);
      rest = rest.slice(word.length);
    }
  }
}
