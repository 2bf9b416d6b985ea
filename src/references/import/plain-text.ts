/** Text from another program's file, fit for one line of the library. */
export interface PlainText {
  readonly text: string;
  /** Whether marks for slanted, raised or other letters were taken out. */
  readonly hadMarks: boolean;
}

/**
 * One line without marks: the rich text of CSL-JSON (`<i>`, `<sup>`, `<span …>`), character references and characters
 * that steer a screen or turn the writing direction go. Any other `<…>` is the author's and stays, as text.
 */
export function plainText(written: string): PlainText {
  const unmarked = written
    .replace(/<\/?(?:i|b|em|strong|u|sup|sub|sc|scp)>|<span(?: [^<>]{0,200})?>|<\/span>/gi, '')
    .replace(/&(?:amp|lt|gt|quot|apos|nbsp|#39);/g, (reference) => characters[reference] ?? reference);
  const text = unmarked
    .replace(/[\t\n\v\f\r\u2028\u2029 ]+/g, ' ')
    .replace(steering, '')
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .normalize('NFC')
    .trim();
  return {text, hadMarks: unmarked !== written};
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to take out
const steering = /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufeff]/g;

const characters: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&apos;': "'",
  '&#39;': "'",
  '&nbsp;': '\u00a0',
};
