import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {sizeAsSent} from './parts/measurements.ts';

const edgesOf = {width: ['top', 'bottom'], height: ['left', 'right']} as const;

/**
 * A piece is at least as large as the syllabus asks, at its shortest edge, after blocking.
 *
 * Why: the assessors lay a ruler on it; a smaller swatch is returned whatever its knitting.
 *
 * Example: `size: { top: 9.6 cm, bottom: 10.2 cm, … }` where the syllabus asks for a width of 10 cm.
 */
export const pieceTooSmall: Rule = {
  id: 'piece-too-small',
  summary: 'a piece is at least as large as the syllabus asks',
  severity: 'error',
  check(binder, report) {
    for (const item of binder.items) {
      const sent = sizeAsSent(item);
      for (const side of ['width', 'height'] as const) {
        const asked = item.requirement?.limits.size?.[side];
        if (!asked || !sent) continue;
        const edges = edgesOf[side].flatMap((edge) => {
          const length = sent.size[edge];
          return length ? [{edge, length}] : [];
        });
        const shortest = edges.sort((a, b) => a.length.millimetres.compare(b.length.millimetres))[0];
        if (!shortest || shortest.length.millimetres.compare(asked.millimetres) >= 0) continue;
        report({
          file: item.file,
          ...scalarAt(item.places, [...sent.path, shortest.edge], shortest.length.text),
          message: `the ${shortest.edge} edge measures \`${shortest.length.text}\`; the syllabus asks for a ${side} of \`${asked.text}\``,
          hint: 'Work the piece larger; stretching it while blocking would falsify the gauge.',
        });
      }
    }
  },
};
