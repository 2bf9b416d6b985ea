import {englishList} from '../support/english-list.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {isUnread} from './parts/is-unread.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';
import {measurementsOf, sizeAsSent} from './parts/measurements.ts';

/**
 * A piece whose size or evenness the syllabus limits is measured along the edges concerned.
 *
 * Why: what was not measured cannot be checked before the box is posted, and the assessors will measure it.
 *
 * Example: `size: {width: 10 cm}` in the syllabus, and a swatch whose `size` states neither `top` nor `bottom`. Where
 * nothing was measured although gauge counts are asked, `too-few-gauge-counts` says so and this is silent.
 */
export const unmeasuredSize: Rule = {
  id: 'unmeasured-size',
  summary: 'a piece whose size or evenness the syllabus limits is measured along the edges concerned',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      if (!('measured' in item.fields) || !item.requirement || isUnread(binder, item, ['measured'])) continue;
      const {size, evenness, gauge} = item.requirement.limits;
      if (measurementsOf(item).length === 0 && (gauge?.places || gauge?.when?.length)) continue;
      const sent = sizeAsSent(item);
      const missing = (['top', 'bottom', 'left', 'right'] as const).filter((edge) => {
        const isEnd = edge === 'top' || edge === 'bottom';
        const other = ({top: 'bottom', bottom: 'top', left: 'right', right: 'left'} as const)[edge];
        if (sent?.size[edge]) return false;
        return (
          Boolean(isEnd ? evenness?.ends : evenness?.sides) ||
          (Boolean(isEnd ? size?.width : size?.height) && !sent?.size[other])
        );
      });
      if (missing.length === 0) continue;
      report({
        file: item.file,
        ...(sent
          ? {place: valueAt(item.places, sent.path)}
          : item.places.has(['measured'])
            ? {place: item.places.key(['measured'])}
            : scalarAt(item.places, ['requirement'], item.id)),
        message: `\`${item.id}\` states no length for ${englishList(missing.map((edge) => `\`${edge}\``))}`,
        hint: 'Lay the piece flat, measure along the edge and write it under `size`.',
        lacks: {
          count: missing.length,
          inShort: `${englishList(missing)} ${missing.length === 1 ? 'edge' : 'edges'}`,
        },
        atMost,
      });
    }
  },
};
