/**
 * Text that the citation processor can take. It uses texts as keys of plain objects, names joined by `::`: so a text
 * that is the name of an object's own property (`constructor`) or holds `::` gets an invisible joiner.
 */
export function toCslText(text: string): string {
  const trimmed = text.trim();
  return trimmed in {} ? `${trimmed}${joiner}` : trimmed.replaceAll('::', `:${joiner}:`);
}

/** U+2060 WORD JOINER: takes no room and allows no break. */
const joiner = '\u2060';
