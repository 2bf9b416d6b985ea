import type {Workspace} from '../io/workspace.ts';
import {validateFields} from '../model/fields/validate-fields.ts';
import {settingsPath} from '../model/read-binder-files.ts';
import {binderSettingsSchema} from '../model/schema/binder-settings.ts';
import {readYaml} from '../yaml/read-yaml.ts';

/** The browser that the binder file names, before anything else of the binder is read; null where it names none. */
export async function browserSetting(workspace: Workspace): Promise<string | null> {
  const text = await workspace.readText(settingsPath).catch(() => null);
  if (text === null) return null;
  const {value, places} = readYaml(text);
  const {fields} = validateFields(binderSettingsSchema, {value: value ?? {}, places, at: []});
  return fields?.browser ?? null;
}
