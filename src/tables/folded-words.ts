import {type Folded, foldRepeats} from '../knitting/fold-repeats.ts';
import {plural} from '../support/plural.ts';

/** A scheme in words, repeats said once, except that one thing is written up to three times: `(3 of 4, 3 of 4, 4 of 5) 4 times`. */
export function foldedWords(parts: readonly string[]): string {
  return foldRepeats(parts).map(words).join(', ');
}

function words(part: Folded<string>): string {
  if (part.kind === 'one') return part.value;
  const inner = part.passage.map(words).join(', ');
  if (part.passage.length > 1) return `(${inner}) ${plural(part.times, 'time')}`;
  return part.times > 3
    ? `${inner} ${plural(part.times, 'time')}`
    : Array.from({length: part.times}, () => inner).join(', ');
}
