/** `mean` → `Mean`: how a line label begins. */
export function capitalized(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
