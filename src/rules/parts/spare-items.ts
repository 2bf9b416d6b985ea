import {type Binder, type Item, itemsById, type Requirement, requirementsOf} from '../../model/binder.ts';
import {nearestName} from '../../support/nearest-name.ts';

/** An item that answers nothing as it stands: its requirement does not exist or is answered already. */
export interface SpareItem {
  readonly item: Item;
  /** The item that answers the requirement already; null when the requirement does not exist. */
  readonly first: Item | null;
  /** The unanswered requirement of the same kind whose id is a slip away: one wrong id is one finding, not two. */
  readonly meant: Requirement | null;
}

/** Items for no requirement and second items for one, each with the requirement it was probably meant for. */
export function spareItems(binder: Binder): readonly SpareItem[] {
  const first = itemsById(binder);
  const unanswered = requirementsOf(binder).filter((requirement) => !first.has(requirement.id));
  return binder.items
    .filter((item) => item.requirement === null || first.get(item.id) !== item)
    .map((item) => {
      const candidates = unanswered.filter((requirement) => requirement.kind === item.kind);
      const nearest = nearestName(
        item.id,
        candidates.map((requirement) => requirement.id),
      );
      const meant = candidates.find((requirement) => requirement.id === nearest) ?? null;
      if (meant) unanswered.splice(unanswered.indexOf(meant), 1);
      return {item, first: item.requirement === null ? null : (first.get(item.id) ?? null), meant};
    });
}
