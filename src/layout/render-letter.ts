import {itemSheet} from './item-sheet.ts';
import type {LayoutInput} from './layout-input.ts';
import {withBlankBacks} from './planned-sheet.ts';
import type {PageCounts, Printable} from './printable.ts';
import {renderSheets} from './render-sheets.ts';
import {unlinkAbsent} from './unlink-absent.ts';

/** The letters of the binder, to lie on top in the box. Null when it has none. */
export function renderLetter(input: LayoutInput, counts: PageCounts): Printable | null {
  const {settings} = input.binder;
  const letters = [...input.composed.values()]
    .filter(({item}) => item.kind === 'letter' && item.requirement !== null)
    .map((composed) => itemSheet(input, composed, null));
  if (letters.length === 0) return null;
  const sheets = settings.sides === 'duplex' ? withBlankBacks(letters, counts) : letters;
  return renderSheets(input, `Letter: ${settings.candidate.name}`, sheets, counts, {finish: unlinkAbsent});
}
