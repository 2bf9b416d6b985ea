import {plural} from '../support/plural.ts';
import {type Folded, foldRepeats} from './fold-repeats.ts';

/**
 * One row in the trade's written language, from its steps in order: `k3`, `k2tog`, `k4`, … A passage that comes again is
 * written once: between `*` and `rep from *` when it is the only one, otherwise in brackets. Steps of no stitches are
 * left out by the caller.
 */
export function writeRow(steps: readonly string[]): string {
  const folded = foldRepeats(steps);
  const repeats = folded.filter(({kind}) => kind === 'repeat');
  const [only] = repeats;
  const isStar = repeats.length === 1 && only?.kind === 'repeat' && only.passage.every(isOne);
  const text = isStar ? withStar(folded) : folded.map(inBrackets).join(', ');
  return `${text.replace(/[a-z]/, (letter) => letter.toUpperCase())}.`;
}

/** `k` and how many, as one step; nothing for none. */
export function plainSteps(count: number, hand: 'k' | 'p'): readonly string[] {
  return count === 0 ? [] : [`${hand}${count}`];
}

function withStar(folded: readonly Folded<string>[]): string {
  return folded
    .map((part) => {
      if (part.kind === 'one') return part.value;
      const passage = part.passage.map(inBrackets).join(', ');
      const more = part.times - 1;

      return `*${passage}; rep from * ${more} more ${more === 1 ? 'time' : 'times'}`;
    })
    .join(', ');
}

function inBrackets(part: Folded<string>): string {
  if (part.kind === 'one') return part.value;
  return `[${part.passage.map(inBrackets).join(', ')}] ${plural(part.times, 'time')}`;
}

function isOne(part: Folded<string>): boolean {
  return part.kind === 'one';
}
