import type {Finding} from '../../diagnostics/finding.ts';
import {type Binder, type Requirement, requirementsOf} from '../../model/binder.ts';
import {binderStatus} from '../../model/binder-status.ts';
import {type ItemStatus, itemStatus} from '../../model/item-status.ts';
import {nearestName} from '../../support/nearest-name.ts';
import {UsageError} from '../../support/usage-error.ts';
import {visibleText} from '../../support/visible-text.ts';
import {itemText} from './item-text.ts';
import {overviewText} from './overview-text.ts';
import {itemsJson, overviewJson, tiedJson} from './status-json.ts';
import {tiedText} from './tied-text.ts';

export interface StatusWishes {
  /** The items asked about; none for the whole binder. */
  readonly ids: readonly string[];
  /** The piece whose questions are asked for, or null. */
  readonly tiedTo: string | null;
  readonly isJson: boolean;
}

/** What was asked for, as text of so many columns or as JSON. Throws `UsageError` when the syllabus does not name an id. */
export function tellStatus(
  binder: Binder,
  findings: readonly Finding[],
  {ids, tiedTo, isJson}: StatusWishes,
  columns: number,
): string {
  const about = (id: string) => itemStatus(binder, findings, requirementOf(binder, id));
  const {certificate, language, units} = binder.settings;
  if (tiedTo !== null) {
    const piece = about(tiedTo);
    return isJson ? tiedJson(piece.id, piece.questions) : shown(tiedText(piece, columns));
  }
  if (ids.length > 0) {
    const items = ids.map(about);
    const text = (item: ItemStatus) => itemText(item, {columns, language, units});
    return isJson ? itemsJson(items) : shown(items.map(text).join('\n'));
  }
  const status = binderStatus(binder, findings);
  const title = [certificate.name, certificate.part].filter(Boolean).join(', ');
  return isJson ? overviewJson(status) : shown(overviewText({title, status, findings, columns}));
}

/** Throws `UsageError` when the syllabus does not name `id`. */
function requirementOf(binder: Binder, id: string): Requirement {
  const all = requirementsOf(binder);
  const found = all.find((one) => one.id === id);
  if (found) return found;
  const near = nearestName(
    id,
    all.map((one) => one.id),
  );
  throw new UsageError(
    `the syllabus names no \`${id}\`${near ? `; did you mean \`${near}\`?` : '; `status` alone lists its sections'}`,
  );
}

/** Text from files must not steer the terminal, and not every terminal knows spaces that do not break. */
function shown(text: string): string {
  return visibleText(text.replaceAll('\u00a0', ' ').replace(/ +$/gm, ''));
}
