/** A file's text without its byte order mark, and what it was taken for when it is not UTF-8. */
export interface DecodedText {
  readonly text: string;
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

/**
 * Bytes as text: UTF-16 where a byte order mark says so, UTF-8 where they are that, and else Windows-1252, which older
 * programs write and in which all bytes mean something (WHATWG Encoding).
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return {text: decode('utf-16le', bytes), encoding: 'UTF-16'};
  if (first === 0xfe && second === 0xff) return {text: decode('utf-16be', bytes), encoding: 'UTF-16'};
  try {
    return {text: new TextDecoder('utf-8', {fatal: true}).decode(bytes), encoding: 'UTF-8'};
  } catch {
    return {text: decode('windows-1252', bytes), encoding: 'Windows-1252'};
  }
}

function decode(encoding: string, bytes: Uint8Array): string {
  return new TextDecoder(encoding).decode(bytes);
}
