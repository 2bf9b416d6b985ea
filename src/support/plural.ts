/** `plural(1, 'leaf', 'leaves')` → `1 leaf`; without a plural form an `s` is added. */
export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
