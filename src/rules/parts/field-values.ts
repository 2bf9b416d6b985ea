/** A value of an item's front matter, with its path; `undefined` where nothing is written. */
export interface FieldValue {
  readonly path: readonly (string | number)[];
  readonly value: unknown;
}

/** Every value that a name such as `yarn.name` stands for: one for each entry where a list is passed on the way. */
export function fieldValues(fields: unknown, name: string): readonly FieldValue[] {
  return along(fields, name.split('.'), []);
}

/** Every text in `value`, however deep, with its path. */
export function textsIn(
  value: unknown,
  path: FieldValue['path'] = [],
): readonly {path: FieldValue['path']; text: string}[] {
  if (typeof value === 'string') return [{path, text: value}];
  if (Array.isArray(value)) return value.flatMap((entry: unknown, index) => textsIn(entry, [...path, index]));
  if (!isPlainRecord(value)) return [];
  return Object.entries(value).flatMap(([key, entry]) => textsIn(entry, [...path, key]));
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
