/**
 * Lines of at most `width` letters, broken at spaces; every line after the first begins with `indent` spaces. A word
 * that is longer than a line stands on a line of its own.
 */
export function wrapWords(text: string, width: number, indent = 0): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    const room = width - (lines.length === 0 ? 0 : indent);
    if (line.trim() === '' || [...longer].length <= room) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line].map((one, index) => (index === 0 ? one : `${' '.repeat(indent)}${one}`));
}
