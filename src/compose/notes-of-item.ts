import type {Finding, Severity} from '../diagnostics/finding.ts';
import type {Item} from '../model/binder.ts';

/** Findings about one sheet, sorted by where they are printed; each list begins with what weighs most. */
export interface SheetNotes {
  /** Of the front matter, or of the file as a whole. */
  readonly atHead: readonly Finding[];
  readonly besideText: readonly Finding[];
}

/** Those of `findings` that are about the item's file. */
export function notesOfItem(
  {file, body}: Pick<Item, 'file' | 'body'>,
  findings: readonly Finding[],
): SheetNotes {
  const own = byWeight(findings.filter((finding) => finding.file === file));
  const first = body.tree.children.find(({type}) => type !== 'yaml')?.position?.start.line ?? Infinity;
  return {
    atHead: own.filter(({place}) => place.line < first),
    besideText: own.filter(({place}) => place.line >= first),
  };
}

const weights: Readonly<Record<Severity, number>> = {error: 0, warning: 1, info: 2};

/** Errors before warnings before what is for information; among equals the order stays. */
export function byWeight(findings: readonly Finding[]): readonly Finding[] {
  return [...findings].sort((one, other) => weights[one.severity] - weights[other.severity]);
}
