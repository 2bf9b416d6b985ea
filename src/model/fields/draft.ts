import type {Places, YamlPath} from '../../yaml/places.ts';

/**
 * A copy of what the author wrote that may be repaired, so that the good part of a partly faulty file is still read.
 * Remembers where everything stood.
 */
export interface Draft {
  readonly value: unknown;
  /** Takes a value out; out of a list, too. */
  remove(path: YamlPath): void;
  rename(path: YamlPath, name: string): void;
  replace(path: YamlPath, value: unknown): void;
  /** The path in the file for a path in the draft. */
  written(path: YamlPath): YamlPath;
}

/** Fields without a value (`colour:` and nothing after it) are left out: to leave a field empty is not to fill it. */
export function draftOf(source: unknown): Draft {
  /** For each list or group: the steps in the file, by its own steps. */
  const steps = new Map<unknown, Map<string | number, string | number>>();
  const lists = new Map<unknown, number[]>();

  function copy(value: unknown): unknown {
    if (Array.isArray(value)) {
      const list = value.map(copy);
      lists.set(
        list,
        list.map((_, index) => index),
      );
      return list;
    }
    if (typeof value !== 'object' || value === null) return value;
    const filled = Object.entries(value).filter(([, field]) => field !== null);
    const group: Record<string, unknown> = Object.assign(
      Object.create(null),
      Object.fromEntries(filled.map(([name, field]) => [name, copy(field)])),
    );
    steps.set(group, new Map(Object.keys(group).map((name) => [name, name])));
    return group;
  }

  const top = {value: copy(source)};

  const containerOf = (path: YamlPath): unknown =>
    path.slice(0, -1).reduce<unknown>((value, step) => (isGroup(value) ? value[step] : undefined), top.value);

  return {
    get value() {
      return top.value;
    },
    remove(path) {
      const [container, step] = [containerOf(path), path.at(-1)];
      if (Array.isArray(container) && typeof step === 'number') {
        container.splice(step, 1);
        lists.get(container)?.splice(step, 1);
      } else if (isGroup(container) && step !== undefined) {
        delete container[step];
      }
    },
    rename(path, name) {
      const [container, step] = [containerOf(path), path.at(-1)];
      if (!isGroup(container) || step === undefined) return;
      container[name] = container[step];
      delete container[step];
      steps.get(container)?.set(name, step);
    },
    replace(path, value) {
      const [container, step] = [containerOf(path), path.at(-1)];
      if (isGroup(container) && step !== undefined) container[step] = value;
    },
    written(path) {
      let value = top.value;
      return path.map((step) => {
        const inFile = typeof step === 'number' ? lists.get(value)?.[step] : steps.get(value)?.get(step);
        // A single value in the place of a list is its own first entry.
        if (typeof step === 'string' || Array.isArray(value))
          value = isGroup(value) ? value[step] : undefined;
        return inFile ?? step;
      });
    },
  };
}

/** Places for paths in the draft, and below `base` in the file. */
export function draftPlaces(draft: Draft, places: Places, base: YamlPath): Places {
  const written = (path: YamlPath) => [...base, ...draft.written(path)];
  return {
    value: (path) => places.value(written(path)),
    key: (path) => places.key(written(path)),
    within: (path, start, end) => places.within(written(path), start, end),
    has: (path) => places.has(written(path)),
  };
}

function isGroup(value: unknown): value is Record<string | number, unknown> {
  return typeof value === 'object' && value !== null;
}
