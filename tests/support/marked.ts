/** Marks a place in a tagged template: ``marked`k ${HERE}wobble` `` gives the text without the mark and where it stood. */
export const HERE = Symbol('here');

export interface Marked {
  readonly source: string;
  /** Lines and columns from 1, offsets from 0, in the order of the marks. */
  readonly places: readonly {readonly line: number; readonly column: number; readonly offset: number}[];
}

export function marked(strings: TemplateStringsArray, ...values: readonly (typeof HERE | string)[]): Marked {
  let source = strings[0] ?? '';
  const places: {line: number; column: number; offset: number}[] = [];
  values.forEach((value, index) => {
    if (value === HERE) {
      const lines = source.split('\n');
      places.push({line: lines.length, column: (lines.at(-1) ?? '').length + 1, offset: source.length});
    } else {
      source += String(value);
    }
    source += strings[index + 1] ?? '';
  });
  return {source, places};
}
