/**
 * `text` as a CSS string that may stand in a `<style>` element: quotes, backslashes, control characters and `<` are
 * written as hexadecimal escapes, each ended by a space.
 */
export function cssString(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: a line end would close the string
  const escaped = text.replace(/["\\<>&\u0000-\u001f\u007f-\u009f\u2028\u2029]/g, (character) =>
    character === '\u0000' ? '\\fffd ' : `\\${(character.codePointAt(0) ?? 0).toString(16)} `,
  );
  return `"${escaped}"`;
}
