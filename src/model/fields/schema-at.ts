import * as z from 'zod';
import type {YamlPath} from '../../yaml/places.ts';

/** The schemas that a value at `path` may follow, wrappers taken off; more than one where there is a choice. */
export function schemasAt(schema: unknown, path: YamlPath): readonly z.ZodType[] {
  const here = unwrapped(schema);
  const [step, ...rest] = path;
  if (step === undefined) return here;
  return here.flatMap((candidate) => schemasAt(stepInto(candidate, step), rest));
}

/** The names of the fields that may stand in the group at `path`. */
export function knownNames(schema: z.ZodType, path: YamlPath): readonly string[] {
  const names = schemasAt(schema, path).flatMap((candidate) => {
    if (candidate instanceof z.ZodObject) return Object.keys(candidate.shape);
    if (candidate instanceof z.ZodRecord && candidate.keyType instanceof z.ZodEnum)
      return candidate.keyType.options.map(String);
    return [];
  });
  return [...new Set(names)];
}

/** What the schema says of the value at `path`, such as `a length with its unit`; null when it says nothing. */
export function descriptionAt(schema: z.ZodType, path: YamlPath): string | null {
  const parents = path.length === 0 ? [schema] : schemasAt(schema, path.slice(0, -1));
  const step = path.at(-1);
  for (const parent of parents) {
    const child = step === undefined ? parent : stepInto(parent, step);
    const description = firstDescription(child);
    if (description !== null) return description;
  }
  return null;
}

function stepInto(schema: unknown, step: string | number): unknown {
  if (schema instanceof z.ZodObject && typeof step === 'string') return schema.shape[step];
  if (schema instanceof z.ZodArray && typeof step === 'number') return schema.element;
  if (schema instanceof z.ZodRecord) return schema.valueType;
  return undefined;
}

/** Takes off optional, default and transform, and spreads choices out. */
function unwrapped(schema: unknown): readonly z.ZodType[] {
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(unwrapped);
  const inner = innerOf(schema);
  if (inner !== undefined) return unwrapped(inner);
  return schema instanceof z.ZodType ? [schema] : [];
}

function innerOf(schema: unknown): unknown {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) return schema.unwrap();
  return schema instanceof z.ZodPipe ? schema.in : undefined;
}

function firstDescription(schema: unknown): string | null {
  if (!(schema instanceof z.ZodType)) return null;
  return schema.description ?? firstDescription(innerOf(schema));
}
