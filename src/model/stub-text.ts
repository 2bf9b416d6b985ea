/**
 * What a stub file writes where the candidate must still write something: the first is what new stubs get, the others
 * are what people write themselves.
 */
export const stubTexts = ['…', '...', 'TODO', '?'] as const;

/** Whether `text` says nothing yet: empty, or only what a stub file holds. */
export function isStubText(text: string): boolean {
  const capitals = text.trim().toUpperCase();
  return capitals === '' || stubTexts.some((stub) => stub === capitals);
}
