/** A value of an item's front matter, with its path; `undefined` where nothing is written. */
export interface FieldValue {
  readonly path: readonly (string | number)[];
  readonly value: unknown;
}

/** Every value that a name such as `yarn.name` stands for: one for each entry where a list is passed on the way. */
export function fieldValues(fields: unknown, name: string): readonly FieldValue[] {
  return along(fields, name.split('.'), []);
}

/** Every text in `value`, however deep, that is wanted, with its path. */
export function textsIn(
  value: unknown,
  isWanted: (text: string) => boolean,
): readonly {path: FieldValue['path']; text: string}[] {
  const found: {path: FieldValue['path']; text: string}[] = [];
  const path: (string | number)[] = [];
  const lookBelow = (step: string | number, entry: unknown) => {
    path.push(step);
    lookAt(entry);
    path.pop();
  };
  const lookAt = (each: unknown) => {
    if (typeof each === 'string') {
      if (isWanted(each)) found.push({path: [...path], text: each});
    } else if (Array.isArray(each)) {
      for (const [index, entry] of each.entries()) lookBelow(index, entry);
    } else if (isPlainRecord(each)) {
      for (const key of Object.keys(each)) lookBelow(key, each[key]);
    }
  };
  lookAt(value);
  return found;
}

function along(value: unknown, steps: readonly string[], path: FieldValue['path']): readonly FieldValue[] {
  const [step, ...rest] = steps;
  if (step === undefined) return [{path, value}];
  if (Array.isArray(value) && value.length > 0) {
    return value.flatMap((entry: unknown, index) => along(entry, steps, [...path, index]));
  }
  if (!isPlainRecord(value)) return [{path, value: undefined}];
  return along(value[step], rest, [...path, step]);
}

function isPlainRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
