/** What was seen of one thing that the work needs. */
export interface MachineFact {
  /** Permanent, for other programs. */
  readonly id: string;
  readonly name: string;
  /** `note` does not stand in the way of the work. */
  readonly state: 'fine' | 'note' | 'lacks';
  readonly says: string;
  /** What to do; null where nothing has to be done. */
  readonly remedy: string | null;
}

export type Seen = Omit<MachineFact, 'id' | 'name'>;

export function fine(says: string): Seen {
  return {state: 'fine', says, remedy: null};
}

export function note(says: string, remedy: string): Seen {
  return {state: 'note', says, remedy};
}

export function lacks(says: string, remedy: string): Seen {
  return {state: 'lacks', says, remedy};
}
