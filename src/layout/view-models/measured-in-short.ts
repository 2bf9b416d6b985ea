import type {Item} from '../../model/binder.ts';
import type {Measurement, Size} from '../../model/schema/item-fields.ts';
import {setTypography} from '../../support/typography.ts';

/** The last measurement after blocking; of a piece that is not blocked yet, its last one. Null when nothing was measured. */
export function finalMeasurement(item: Item): Measurement | null {
  const measured = 'measured' in item.fields ? item.fields.measured : [];
  return measured.findLast(({when}) => when === 'after blocking') ?? measured.at(-1) ?? null;
}

/** The edges as written, such as `top 10.8, bottom 18.9, left 14, right 13.9 cm`; null when none was measured. */
export function edgesInShort(size: Size | undefined): string | null {
  const edges = (['top', 'bottom', 'left', 'right'] as const).flatMap((edge) => {
    const length = size?.[edge];
    return length === undefined ? [] : [{edge, text: length.text}];
  });
  if (edges.length === 0) return null;
  const unit = commonUnit(edges.map(({text}) => text));
  const shown = edges.map(({edge, text}, index) => {
    const keepsUnit = unit === null || index === edges.length - 1;
    return `${edge} ${keepsUnit ? text : text.slice(0, -unit.length).trim()}`;
  });
  return setTypography(shown.join(', '));
}

/** The unit that ends every text, or null when they differ. */
function commonUnit(texts: readonly string[]): string | null {
  const units = new Set(texts.map((text) => /\p{L}+$|"$/u.exec(text.trim())?.[0] ?? ''));
  const [unit] = units;
  return units.size === 1 && unit ? unit : null;
}
