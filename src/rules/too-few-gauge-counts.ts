import {englishList} from '../support/english-list.ts';
import {plural} from '../support/plural.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt, valueAt} from './parts/field-place.ts';
import {countedGauges} from './parts/gauge-counts.ts';
import {isUnread} from './parts/is-unread.ts';
import {itemsToComplete} from './parts/items-to-complete.ts';

/**
 * Stitches and rows are counted at as many places as the syllabus asks, before or after blocking as it asks.
 *
 * Why: one count says nothing about evenness, and a count at an edge is off by half a stitch.
 *
 * Example: `gauge: {places: 3, when: [after blocking]}` in the syllabus, and `rows: [27 over 10 cm, 27 over 10 cm]`.
 */
export const tooFewGaugeCounts: Rule = {
  id: 'too-few-gauge-counts',
  summary: 'stitches and rows are counted at as many places as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      const limit = item.requirement?.limits.gauge;
      if (!(limit?.places || limit?.when) || !('measured' in item.fields)) continue;
      if (isUnread(binder, item, ['measured'])) continue;
      const places = limit.places ?? 1;
      const gauges = countedGauges(item);
      const missing = (limit.when ?? []).filter((when) => !gauges.some((gauge) => gauge.when === when));
      if (missing.length > 0 || gauges.length === 0) {
        report({
          file: item.file,
          ...(item.places.has(['measured'])
            ? {place: item.places.key(['measured'])}
            : scalarAt(item.places, ['requirement'], item.id)),
          message: `\`${item.id}\` was not measured ${missing.length > 0 ? englishList(missing) : 'at all'}`,
          hint: `Add an entry to \`measured\`, with stitches and rows each counted at ${plural(places, 'place')}.`,
          lacks: {
            count: Math.max(1, missing.length) * 2 * places,
            inShort: missing.length > 0 ? `gauge ${englishList(missing)}` : 'gauge',
          },
          atMost,
        });
      }
      for (const {what, when, counts, path} of gauges) {
        if (limit.when && !limit.when.includes(when)) continue;
        const short = places - counts.length;
        if (short <= 0) continue;
        report({
          file: item.file,
          place: valueAt(item.places, path),
          message: `\`${item.id}\` has \`${plural(counts.length, 'count')}\` of ${what} ${when}; the syllabus asks for \`${places}\``,
          hint: `Count the ${what} at ${plural(short, 'more place')}.`,
          lacks: {count: short, inShort: `${what} at ${plural(short, 'more place')}`},
          atMost,
        });
      }
    }
  },
};
