import {sameLetters} from './same-letters.ts';
import type {Source, SourceName} from './source.ts';

type Titled = Omit<Source, 'id'>;

/** Whoever made the source: its authors, else its editors, else its directors. */
export function creatorsOf({author, editor, director}: Titled): readonly SourceName[] {
  return [author, editor, director].find((names) => names && names.length > 0) ?? [];
}

/** The family name, or the body, that a list would sort the source under; to be compared, not printed. */
export function leadingName(source: Titled): string {
  const [first] = creatorsOf(source);
  return sameLetters(first?.family ?? first?.literal ?? '');
}

/** The title without its subtitle; to be compared, not printed. */
export function mainTitle({title = ''}: Titled): string {
  return sameLetters(title.split(/:\s/)[0] ?? '');
}
