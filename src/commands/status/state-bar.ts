import type {ItemState, StateCounts} from '../../model/item-state.ts';
import {stateInWords, statesFromTheEnd} from '../../model/state-words.ts';
import {apportion} from '../../support/apportion.ts';

/** Each state's sign in a bar: ASCII, which every terminal has. */
const signs: Readonly<Record<ItemState, string>> = {
  passed: '#',
  sent: '>',
  printed: '+',
  finished: '=',
  'in work': '-',
  rework: '!',
  planned: '.',
};

/** `#####>>==--..`: as many signs as `width`, in the proportion of the counts; each state that occurs has one at least. */
export function stateBar(counts: StateCounts, width: number): string {
  const shares = apportion(
    statesFromTheEnd.map((state) => counts[state]),
    width,
  );
  return statesFromTheEnd.map((state, index) => signs[state].repeat(shares[index] ?? 0)).join('');
}

/** What the signs mean, of those states that occur. */
export function barKey(counts: StateCounts): string {
  return statesFromTheEnd
    .filter((state) => counts[state] > 0)
    .map((state) => `${signs[state]}\u00a0${stateInWords(state).replace(' ', '\u00a0')}`)
    .join('   ');
}
