import type {Nodes} from 'mdast';
import {toString as textOf} from 'mdast-util-to-string';
import type {Place} from '../diagnostics/finding.ts';
import type {Item} from '../model/binder.ts';
import {isStubText} from '../model/stub-text.ts';
import {eachNode} from '../support/each-node.ts';
import type {Rule} from './define-rule.ts';
import {scalarAt} from './parts/field-place.ts';
import {textsIn} from './parts/field-values.ts';
import {isUnfinished, itemsToComplete} from './parts/items-to-complete.ts';

/**
 * Nothing is left as a stub wrote it.
 *
 * Why: `…`, `TODO` and `?` are meant for the candidate and would be printed for the assessors, on a sheet or, from the
 * binder file, on the title page.
 *
 * Example: `blocking: …` in the front matter, or a paragraph that consists of `TODO`.
 */
export const stubText: Rule = {
  id: 'stub-text',
  summary: 'nothing is left as a stub wrote it',
  severity: 'error',
  check(binder, report) {
    for (const {item, atMost} of itemsToComplete(binder)) {
      for (const stub of [...stubFields(item), ...stubParagraphs(item)]) {
        report({
          file: item.file,
          place: stub.place,
          message: `\`${stub.text}\` still stands ${stub.where}`,
          hint: 'Write what belongs there, or take it out.',
          actual: stub.text,
          lacks: {count: 1, inShort: stub.name},
          atMost,
        });
      }
    }
    for (const {path, text} of textsIn(binder.settings, isStub)) {
      report({
        file: binder.settingsFile,
        ...scalarAt(binder.settingsPlaces, path, text),
        message: `\`${text}\` still stands in \`${nameOf(path)}\``,
        hint: 'Write what belongs there, or take it out.',
        // While nothing is finished there is nothing to post that it could spoil.
        atMost: binder.items.every(isUnfinished) ? 'info' : undefined,
      });
    }
  },
};

interface Stub {
  readonly place: Place;
  readonly text: string;
  readonly where: string;
  /** What is a stub: a field, or a paragraph. */
  readonly name: string;
}

function stubFields(item: Item): readonly Stub[] {
  return textsIn(item.fields, isStub).map(({path, text}) => {
    const name = nameOf(path);
    return {place: scalarAt(item.places, path, text).place, text, where: `in \`${name}\``, name};
  });
}

function isStub(text: string): boolean {
  return text !== '' && isStubText(text);
}

function nameOf(path: readonly (string | number)[]): string {
  return path.filter((step) => typeof step === 'string').join('.');
}

function stubParagraphs(item: Item): readonly Stub[] {
  const stubs: Stub[] = [];
  eachNode<Nodes>(item.body.tree, (node) => {
    if (node.type !== 'paragraph') return;
    const {children, position} = node;
    const [only, ...others] = children;
    if (!position || only?.type !== 'text' || others.length > 0 || !isStubText(textOf(only))) return;
    const {start, end} = position;
    const place = {line: start.line, column: start.column, endLine: end.line, endColumn: end.column};
    stubs.push({place, text: only.value, where: 'as a paragraph', name: 'a paragraph'});
  });
  return stubs;
}
