/** A text with all put aside in which two entries for one thing may differ: case, accents, marks and spaces. */
export function sameLetters(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
