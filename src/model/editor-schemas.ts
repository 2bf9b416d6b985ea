import * as z from 'zod';
import {folderOfKind, kinds} from './kinds.ts';
import {
  assessmentsFolder,
  ledgerPath,
  libraryPath,
  roundsFolder,
  settingsPath,
  syllabusPath,
} from './read-binder-files.ts';
import {assessmentSchema} from './schema/assessment.ts';
import {binderSettingsSchema} from './schema/binder-settings.ts';
import {fieldSchemas} from './schema/item-fields.ts';
import {printLedgerSchema} from './schema/print-ledger.ts';
import {sentRoundSchema} from './schema/sent-round.ts';
import {librarySchema} from './schema/source.ts';
import {syllabusSchema} from './schema/syllabus.ts';
import {stubTexts} from './stub-text.ts';

type JsonSchema = z.core.JSONSchema.JSONSchema;

/** What an editor needs to know to complete and check files of one sort while they are written. */
export interface EditorSchema {
  readonly name: string;
  /** The files it is for, within the binder folder; `*` stands for any name. */
  readonly files: string;
  /** Whether it is for the fields at the top of Markdown files, not for whole YAML files. */
  readonly isFrontMatter: boolean;
  readonly schema: JsonSchema;
}

/**
 * A JSON Schema for each sort of file, made from what reads them. The draft is 07, the newest that editors' YAML services
 * all know; nothing in the schemas means anything else in draft 2020-12.
 */
export function editorSchemas(): readonly EditorSchema[] {
  const yamlFiles = [
    ['binder', settingsPath, binderSettingsSchema],
    ['syllabus', syllabusPath, syllabusSchema],
    ['library', libraryPath, librarySchema],
    ['assessment', `${assessmentsFolder}*.yaml`, assessmentSchema],
    ['print-ledger', ledgerPath, printLedgerSchema],
    ['sent-round', `${roundsFolder}*/sent.yaml`, sentRoundSchema],
  ] as const;
  return [
    ...yamlFiles.map(([name, files, schema]) => ({
      name,
      files,
      isFrontMatter: false,
      schema: toJsonSchema(schema, files),
    })),
    ...kinds.map((kind) => {
      const files = `content/${folderOfKind[kind]}/*.md`;
      return {name: kind, files, isFrontMatter: true, schema: toJsonSchema(fieldSchemas[kind], files)};
    }),
  ];
}

function toJsonSchema(schema: z.ZodType, files: string): JsonSchema {
  return z.toJSONSchema(schema, {
    io: 'input',
    target: 'draft-7',
    override({jsonSchema, path}) {
      if (path.length === 0) jsonSchema.title = files;
      const {properties, required = []} = jsonSchema;
      if (properties === undefined) return;
      jsonSchema.properties = Object.fromEntries(
        Object.entries(properties).map(([name, value]) => [
          name,
          required.includes(name) || typeof value === 'boolean' ? value : orUnfilled(value),
        ]),
      );
    },
  });
}

/** A field may be left empty, or hold what a stub wrote: then it is not filled, which is not wrong. */
function orUnfilled({description, default: standard, ...rest}: JsonSchema): JsonSchema {
  return {
    ...(description === undefined ? {} : {description}),
    ...(standard === undefined ? {} : {default: standard}),
    anyOf: [rest, {enum: [null, stubTexts[0]]}],
  };
}
