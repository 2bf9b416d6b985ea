import {type CslRecord, isRecord} from './csl-record.ts';

/** What citation-js knows of the two formats: its parsers take values that we have cut out of the file, and nothing else. */
export interface CitationParsers {
  /** What one BibLaTeX field of an entry says in CSL's fields, with `type`; null when its TeX cannot be read. */
  bibField(type: string, field: string, text: string): CslRecord | null;
  /** Whether `\name` stands for a letter, an accent or a shape of the letters. */
  knowsMacro(name: string): boolean;
  /** What the tags of one RIS record say in CSL's fields; null when it cannot be read. */
  risRecord(tags: Readonly<Record<string, string | readonly string[]>>): CslRecord | null;
}

/** Loads the parsers: call it only when a file is imported. */
export async function loadCitationParsers(): Promise<CitationParsers> {
  const [{plugins}] = await Promise.all([
    import('@citation-js/core'),
    import('@citation-js/plugin-bibtex'),
    import('@citation-js/plugin-ris'),
  ]);
  const {constants} = plugins.config.get('@bibtex');
  const macros = new Set(macroTables.flatMap((table) => Object.keys(constants[table] ?? {})));
  const first = (input: unknown, type: '@biblatex/entry+object' | '@ris/record'): CslRecord | null => {
    try {
      const parsed = plugins.input.data(input, type);
      const record: unknown = Array.isArray(parsed) ? parsed[0] : parsed;
      return isRecord(record) ? record : null;
    } catch {
      // It throws for faulty TeX, for nesting deeper than the stack, and for tags written twice.
      return null;
    }
  };
  return {
    bibField: (type, field, text) =>
      first({type, label: 'entry', properties: {[field]: text}}, '@biblatex/entry+object'),
    knowsMacro: (name) => macros.has(name),
    risRecord: (tags) => first(tags, '@ris/record'),
  };
}

const macroTables = [
  'commands',
  'mathCommands',
  'diacritics',
  'formattingCommands',
  'formattingEnvs',
  'argumentCommands',
];
