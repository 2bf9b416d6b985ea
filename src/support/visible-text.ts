/** Control characters but tab and line end, marks of direction, what has no width, and the tags that hide text in text. */
export const hiddenCharacters =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to make visible
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff\u{e0000}-\u{e007f}]/gu;

/**
 * Makes control characters, bidirectional marks and letters without width visible as `\u{…}`, so that text from a file
 * can neither steer a terminal nor hide in a report. Joiners stay: scripts and emoji are written with them. Tabs and line
 * ends become a space when `oneLine` is set.
 */
export function visibleText(text: string, {oneLine = false} = {}): string {
  const shown = text.replace(
    hiddenCharacters,
    (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`,
  );
  return oneLine ? shown.replace(/[\t\n]+/g, ' ') : shown;
}
