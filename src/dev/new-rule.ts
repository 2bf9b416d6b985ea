// `npm run new:rule -- <id>`: a rule with its doc comment, a passing and a failing case, and its line in the index.
import {existsSync, mkdirSync, readFileSync, writeFileSync} from 'node:fs';
import path from 'node:path';
import process from 'node:process';
import {pathToFileURL} from 'node:url';
import {readingRules} from '../model/reading-rules.ts';

/**
 * Writes the files of a new rule below `root`, the repository, and returns their paths. Throws an error that says why
 * when `id` cannot be one or is taken; then nothing is written.
 */
export function writeNewRule(root: string, id: string): readonly string[] {
  const ruleFile = `src/rules/${id}.ts`;
  const indexFile = 'src/rules/index.ts';
  const itemFile = 'content/questions/q-01.md';
  const at = (file: string) => path.join(root, file);

  if (!/^[a-z]+(-[a-z0-9]+)+$/.test(id)) {
    throw new Error(
      `\`${id}\` is not a rule id: two or more words in small letters with hyphens, such as \`word-limit\``,
    );
  }
  const index = readFileSync(at(indexFile), 'utf8');
  // A rule that was taken out leaves its id in the index as a comment: ids are never given twice.
  const isTaken =
    new RegExp(`(?<![\\w-])${id}(?![\\w-])`).test(index) || readingRules.some((rule) => rule.id === id);
  if (isTaken || existsSync(at(ruleFile)) || existsSync(at(`tests/rules/${id}`))) {
    throw new Error(`the rule id \`${id}\` is taken; ids are permanent`);
  }

  const item = readFileSync(at(`tests/rules/base/${itemFile}`), 'utf8');
  const files = {
    [ruleFile]: ruleText(id),
    [indexFile]: withIndexLine(index, id),
    [`tests/rules/${id}/passing/${itemFile}`]: item,
    [`tests/rules/${id}/failing/${itemFile}`]: item.replace('\nstatus:', '\ntitle: The fault\nstatus:'),
  };
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(path.dirname(at(file)), {recursive: true});
    writeFileSync(at(file), text);
  }
  return Object.keys(files);
}

function ruleText(id: string): string {
  return `import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';

/**
 * The law, as a sentence about what is right.
 *
 * Why: what goes wrong for the candidate or the assessors where it is broken.
 *
 * Example: what an author might write that breaks it. A rule of thumb or a table names its source here.
 */
export const ${nameOf(id)}: Rule = {
  id: '${id}',
  summary: 'the law, as a sentence without a full stop',
  severity: 'warning',
  check(binder, report) {
    for (const item of binder.items) {
      const {title} = item.fields;
      if (title !== 'The fault') continue;
      report({
        file: item.file,
        ...scalarAt(item.places, ['title'], title),
        message: \`\\\`\${item.id}\\\` has the title \\\`\${title}\\\`\`,
        hint: 'One sentence that says what to do.',
      });
    }
  },
};
`;
}

/** The index with the import in its place by file name, and the rule at the end of the list. */
function withIndexLine(index: string, id: string): string {
  const lines = index.split('\n');
  const isImport = (line: string) => /^import .* from '\.\/.*';$/.test(line);
  const next = lines.findIndex((line) => isImport(line) && line.slice(line.indexOf("'./")) > `'./${id}.ts';`);
  const afterLast = lines.findLastIndex(isImport) + 1;
  lines.splice(next < 0 ? afterLast : next, 0, `import {${nameOf(id)}} from './${id}.ts';`);
  const end = lines.indexOf(
    '];',
    lines.findIndex((line) => line.startsWith('const laws')),
  );
  if (end < 0) throw new Error('src/rules/index.ts has no list `laws` that ends with `];`');
  lines.splice(end, 0, `  ${nameOf(id)}, // The reason, in one line.`);
  return lines.join('\n');
}

/** `word-limit` → `wordLimit` */
function nameOf(id: string): string {
  return id.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
}

function main(arguments_: readonly string[]): number {
  const [id, ...others] = arguments_;
  if (id === undefined || others.length > 0) {
    console.error('Usage: npm run new:rule -- <id>, such as `npm run new:rule -- word-limit`');
    return 2;
  }
  try {
    for (const file of writeNewRule(process.cwd(), id)) console.log(file);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return 2;
  }
  console.log(`
Next:
1. Write the law, why, and an example above the rule, and its summary and severity.
2. Make tests/rules/${id}/failing one mistake in a binder that is right otherwise, and passing the nearest thing that is right;
   whatever lies in their content/ lies over tests/rules/base/content.
3. Write \`check\`, the reason beside its line in src/rules/index.ts, and move that line to where it belongs.
4. npm run golden -- tests/rules, and read the two reports: a golden is a claim.
5. npm run check`);
  return 0;
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  process.exitCode = main(process.argv.slice(2));
}
