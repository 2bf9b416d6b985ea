/**
 * Makes control characters and bidirectional marks visible as `\u{…}`, so that text from a file can neither steer a
 * terminal nor hide in a report. Tabs and line ends become a space when `oneLine` is set.
 */
export function visibleText(text: string, {oneLine = false} = {}): string {
  const shown = text.replace(
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to make visible
    /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g,
    (character) => `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`,
  );
  return oneLine ? shown.replace(/[\t\n]+/g, ' ') : shown;
}
