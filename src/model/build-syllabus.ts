import {nearestName} from '../support/nearest-name.ts';
import type {Places, YamlPath} from '../yaml/places.ts';
import type {Requirement, Section, Syllabus} from './binder.ts';
import {knownNames} from './fields/schema-at.ts';
import {isKind, type Kind} from './kinds.ts';
import type {ReadingFault} from './reading-rules.ts';
import {resolveLimits} from './resolve-limits.ts';
import {fieldSchemas} from './schema/item-fields.ts';
import type {SyllabusData} from './schema/syllabus.ts';
import {unknownRequirement} from './unknown-requirement.ts';

/** Numbers the sections, merges the limits, and checks what points from one part of the syllabus to another. */
export function buildSyllabus(
  file: string,
  data: SyllabusData,
  places: Places,
): {readonly syllabus: Syllabus; readonly faults: readonly ReadingFault[]} {
  const faults: ReadingFault[] = [];
  const known = new Map<string, Requirement>();
  const sections = data.sections.map((section, sectionIndex): Section => {
    const requirements = section.requirements.map((written, index): Requirement => {
      const path = ['sections', sectionIndex, 'requirements', index];
      return {
        id: written.id,
        kind: written.kind,
        title: written.title,
        asks: written.asks ?? null,
        tiedTo: written['tied-to'],
        limits: resolveLimits(data.defaults[written.kind] ?? {}, written.limits),
        place: places.value([...path, 'id']),
        path,
      };
    });
    return {
      number: sectionIndex + 1,
      title: section.title,
      tab: section.tab ?? section.title,
      requirements: requirements.filter((requirement) => {
        const first = known.get(requirement.id);
        if (first) faults.push(duplicate(requirement, first, file));
        else known.set(requirement.id, requirement);
        return !first;
      }),
    };
  });
  for (const [kind, limits] of Object.entries(data.defaults)) {
    if (isKind(kind))
      faults.push(...unknownFields(limits.fields ?? [], kind, ['defaults', kind, 'fields'], places));
  }
  for (const requirement of known.values()) {
    const own = [...requirement.path, 'limits', 'fields'];
    faults.push(...unknownTies(requirement, known, places));
    if (places.has(own))
      faults.push(...unknownFields(requirement.limits.fields ?? [], requirement.kind, own, places));
  }
  return {syllabus: {file, title: data.title, sections, places}, faults};
}

function duplicate({id, place}: Requirement, first: Requirement, file: string): ReadingFault {
  return {
    rule: 'duplicate-requirement',
    place,
    message: `\`${id}\` stands twice in the syllabus; the first one is used`,
    hint: 'Give one of the two another id.',
    actual: id,
    related: [{file, place: first.place, message: `\`${id}\` stands here first`}],
  };
}

function unknownTies(
  {tiedTo, path}: Requirement,
  known: ReadonlyMap<string, Requirement>,
  places: Places,
): readonly ReadingFault[] {
  return tiedTo.flatMap((id, index) =>
    known.has(id) ? [] : [unknownRequirement(id, known.keys(), places.value([...path, 'tied-to', index]))],
  );
}

/** A field that no item of the kind can have would be missing for ever. `path` is that of the list of fields. */
function unknownFields(
  fields: readonly string[],
  kind: Kind,
  path: YamlPath,
  places: Places,
): readonly ReadingFault[] {
  return fields.flatMap((field, index) => {
    const steps = field.split('.');
    const fault = steps.flatMap((step, depth) => {
      const known = namesWithin(kind, steps.slice(0, depth));
      return known.includes(step) ? [] : [{step, near: nearestName(step, known), known}];
    })[0];
    if (!fault) return [];
    return [
      {
        rule: 'unknown-field' as const,
        place: places.value([...path, index]),
        message: `\`${fault.step}\` is not a field of a ${kind}`,
        hint: fault.near
          ? `Write \`${[...steps.slice(0, steps.indexOf(fault.step)), fault.near].join('.')}\`.`
          : 'Take it out, or name a field that an item of this kind can have.',
        actual: field,
      },
    ];
  });
}

/** The names that may follow `steps`; entries of lists need no number. */
function namesWithin(kind: Kind, steps: readonly string[]): readonly string[] {
  let paths: readonly YamlPath[] = [[]];
  for (const step of steps)
    paths = paths.flatMap((path) => [
      [...path, step],
      [...path, step, 0],
    ]);
  return paths.flatMap((path) => knownNames(fieldSchemas[kind], path));
}
