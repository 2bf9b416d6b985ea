import {invariant} from '../support/invariant.ts';
import type {PdfFile} from './pdf-file.ts';
import {isReference, isString, type PdfDictionary, type PdfName, type PdfValue} from './pdf-syntax.ts';

/** The ids of structure elements, numbered anew. */
export interface SteadyIds {
  /** The file's text with the new ids, as long as before. */
  readonly text: string;
  /** The tree that finds an element by its new id (ISO 32000-1, 14.7.2 and 7.9.6); null when no element has one. */
  readonly tree: PdfDictionary | null;
  /** The objects that made up the tree of the old ids. */
  readonly oldTree: readonly number[];
}

/**
 * Chromium gives an id to each header cell of a table, so that other cells can name it, and takes it from a counter
 * that depends on what else the browser was doing: two prints of one document differ in nothing but these ids and the
 * time. Here they count from 1 in the order of the file.
 */
export function steadyIds(pdf: PdfFile, structure: PdfDictionary): SteadyIds {
  const oldTree: number[] = [];
  const elements: {readonly id: string; readonly element: number}[] = [];
  const visit = (node: PdfValue | undefined): void => {
    if (node === undefined || !isReference(node)) return;
    oldTree.push(node.object);
    const dictionary = pdf.dictionary(node);
    const names = pdf.array(dictionary.get('/Names'));
    for (let at = 0; at + 1 < names.length; at += 2) {
      const [id = null, element = null] = names.slice(at, at + 2);
      invariant(isString(id) && isReference(element), 'an entry of the tree of ids is an id and an element');
      elements.push({id: id.bytes, element: element.object});
    }
    for (const kid of pdf.array(dictionary.get('/Kids'))) visit(kid);
  };
  visit(structure.get('/IDTree'));
  // Ids of another form would be those of another version, which may have other ways.
  const areKnown = elements.every(({id}) => /^node\d{8}$/.test(id));
  if (elements.length === 0 || !areKnown) return {text: pdf.text, tree: null, oldTree: []};

  elements.sort((a, b) => a.element - b.element);
  const renamed = new Map(elements.map(({id}, index) => [id, `node${String(index + 1).padStart(8, '0')}`]));
  const text = pdf.text.replace(/\((node\d{8})\)/g, (all, id: string) => {
    const other = renamed.get(id);
    return other === undefined ? all : `(${other})`;
  });
  const names = elements.flatMap(({id, element}): PdfValue[] => [
    {bytes: renamed.get(id) ?? id},
    {object: element},
  ]);
  return {text, tree: new Map<PdfName, PdfValue>([['/Names', names]]), oldTree};
}
