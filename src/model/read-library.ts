import type {YamlDocument} from '../yaml/read-yaml.ts';
import type {LibraryEntry} from './binder.ts';
import {validateFields} from './fields/validate-fields.ts';
import type {ReadingFault} from './reading-rules.ts';
import {sourceSchema} from './schema/source.ts';

/** The entries of the reference library: a list at the top of the file, or under `references:`, as CSL-YAML has it. */
export function readLibrary(
  file: string,
  {value, places}: YamlDocument,
): {readonly entries: readonly LibraryEntry[]; readonly faults: readonly ReadingFault[]} {
  const isWrapped = typeof value === 'object' && value !== null && 'references' in value;
  const [list, base] = isWrapped ? [value.references, ['references']] : [value, []];
  if (list === null) return {entries: [], faults: []};
  if (!Array.isArray(list)) {
    const fault: ReadingFault = {
      rule: 'field-shape',
      place: places.key(base),
      message: 'the library is not a list of sources',
      hint: 'Begin each source with `- id:` and its key, and write its other fields below, indented.',
    };
    return {entries: [], faults: [fault]};
  }

  const entries = new Map<string, LibraryEntry>();
  const faults: ReadingFault[] = [];
  for (const [index, entry] of list.entries()) {
    const path = [...base, index];
    const validated = validateFields(sourceSchema, {value: entry, places, at: path});
    faults.push(...validated.faults);
    if (!validated.fields) continue;
    const {id} = validated.fields;
    const place = validated.places.value(['id']);
    const first = entries.get(id);
    if (first) {
      faults.push({
        rule: 'duplicate-source',
        place,
        message: `the key \`${id}\` stands twice in the library; the first one is used`,
        hint: 'Give one of the two another key, or take it out.',
        actual: id,
        related: [{file, place: first.place, message: `\`${id}\` stands here first`}],
      });
    } else {
      entries.set(id, {source: validated.fields, file, place, places: validated.places, path: []});
    }
  }
  return {entries: [...entries.values()], faults};
}
