/** The match of a sticky pattern (flag `y`) that begins exactly at offset `start`, or null. */
export function matchAt(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}
