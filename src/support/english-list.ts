/** `['a', 'b', 'c']` → `a, b and c`. An empty list gives an empty string. */
export function englishList(words: readonly string[], conjunction: 'and' | 'or' = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${conjunction} ${words.at(-1)}`;
}
