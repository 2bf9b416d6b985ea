export function isOpening(text: string | undefined): boolean {
  return text === '(' || text === '[' || text === '{';
}

export function isClosing(text: string | undefined): boolean {
  return text === ')' || text === ']' || text === '}';
}
