import type {Heading, List, Root} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import type {Place} from '../diagnostics/finding.ts';
import {sameLetters} from '../references/same-letters.ts';
import type {Source} from '../references/source.ts';
import {leadingName, mainTitle} from '../references/source-identity.ts';
import {sourceLabel} from '../references/source-label.ts';
import {englishList} from '../support/english-list.ts';
import type {Rule} from './define-rule.ts';
import {entriesByKey} from './parts/library.ts';

const headings = /^(?:references?|reference list|bibliography|works cited|sources|literature)$/i;

/**
 * A reference list written by hand matches what the text cites.
 *
 * Why: every item prints the list of what it cites by itself. A list written under a heading such as "References" stands
 * beside it, and the assessor sees where the two differ. A line belongs to a source when it has the author's family name
 * and the year, or the title.
 *
 * Example: a list below `## References` with a book that the text does not cite.
 */
export const referenceListByHand: Rule = {
  id: 'reference-list-by-hand',
  summary: 'a reference list written by hand matches what the text cites',
  severity: 'warning',
  check(binder, report) {
    const entries = entriesByKey(binder);
    for (const item of binder.items) {
      const written = listBelowHeading(item.body.tree);
      if (written === null) continue;
      const cited = [...new Set(item.citations.map(({citation}) => citation.key))].flatMap(
        (key) => entries.get(key)?.source ?? [],
      );
      const hint =
        'Take the list out: what the text cites is listed by itself; and cite in the text what it lacks.';
      for (const line of written.lines) {
        if (cited.some((source) => belongsTo(line.text, source))) continue;
        report({
          file: item.file,
          place: line.place,
          message: `the list of references has a source that the text does not cite`,
          hint,
        });
      }
      const lacking = cited.filter((source) => !written.lines.some(({text}) => belongsTo(text, source)));
      if (lacking.length === 0) continue;
      const labels = englishList(lacking.map((source) => `\`${sourceLabel(source)}\``));
      report({
        file: item.file,
        place: written.place,
        message: `the list of references lacks ${labels}, which the text cites`,
        hint,
      });
    }
  },
};

interface WrittenList {
  readonly place: Place;
  readonly lines: readonly {readonly text: string; readonly place: Place}[];
}

function listBelowHeading({children}: Root): WrittenList | null {
  const start = children.findIndex((node) => node.type === 'heading' && headings.test(textOf(node).trim()));
  const heading = children[start] as Heading | undefined;
  if (heading === undefined) return null;
  const rest = children.slice(start + 1);
  const end = rest.findIndex(({type}) => type === 'heading');
  const below = end === -1 ? rest : rest.slice(0, end);
  const lists = below.filter((node): node is List => node.type === 'list');
  const nodes =
    lists.length > 0
      ? lists.flatMap(({children: items}) => items)
      : below.filter(({type}) => type === 'paragraph');
  if (nodes.length === 0) return null;
  return {
    place: placeOf(heading),
    lines: nodes.map((node) => ({text: sameLetters(textOf(node)), place: placeOf(node)})),
  };
}

function belongsTo(line: string, source: Source): boolean {
  const name = leadingName(source);
  const year = String(source.issued?.['date-parts'][0]?.[0] ?? '');
  const title = mainTitle(source);
  const words = ` ${line} `;
  const isByName = name !== '' && words.includes(` ${name} `) && (year === '' || words.includes(` ${year} `));
  return isByName || (title.length > 3 && words.includes(` ${title} `));
}

function placeOf({position}: {position?: Heading['position']}): Place {
  const {line = 1, column = 1} = position?.start ?? {};
  return {line, column, endLine: position?.end.line ?? line, endColumn: position?.end.column ?? column};
}
