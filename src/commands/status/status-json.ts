import type {Fraction} from '../../knitting/fraction.ts';
import {countOver} from '../../knitting/gauge.ts';
import {millimetres} from '../../knitting/units.ts';
import type {AttemptFacts} from '../../model/attempt-facts.ts';
import type {BinderStatus, RequirementStatus} from '../../model/binder-status.ts';
import type {ItemStatus} from '../../model/item-status.ts';
import {eveningRule} from '../../model/missing.ts';
import {visibleJson} from '../../support/visible-json.ts';

/** `schemaVersion` grows when a field changes its meaning or goes away. */
const schemaVersion = 1;

export function overviewJson({counts, sections, ready, nearest, evening}: BinderStatus): string {
  return document({
    counts,
    sections,
    ready: ready.map(({id}) => id),
    nearest: nearest.map(({id}) => id),
    evening: {rule: eveningRule, ids: evening.map(({id}) => id)},
  });
}

export function itemsJson(items: readonly ItemStatus[]): string {
  return document({
    items: items.map(({attempts, clippings, findings, ...item}) => ({
      ...item,
      findings: findings.map(({rule, severity, file, place, message, hint}) => ({
        rule,
        severity,
        file,
        ...place,
        message,
        hint,
      })),
      clippings: clippings.map(({on, source, words}) => ({on, source, words})),
      attempts: attempts.map(attemptRecord),
    })),
  });
}

export function tiedJson(id: string, questions: readonly RequirementStatus[]): string {
  return document({for: id, questions});
}

function attemptRecord({left, right, difference, stitches, rows, ...attempt}: AttemptFacts) {
  return {
    ...attempt,
    left: left?.text ?? null,
    right: right?.text ?? null,
    /** Left minus right. */
    differenceMillimetres: difference?.toNumber() ?? null,
    stitchesOver10cm: over10cm(stitches),
    rowsOver10cm: over10cm(rows),
  };
}

function over10cm(gauge: Fraction | null): number | null {
  return gauge && countOver(gauge, millimetres(100)).toNumber();
}

function document(content: object): string {
  return visibleJson({schemaVersion, ...content});
}
