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
    return {text: withSigns(decode('windows-1252', bytes)), encoding: 'Windows-1252'};
  }
}

function decode(encoding: string, bytes: Uint8Array): string {
  return new TextDecoder(encoding).decode(bytes);
}

/** Bytes 80 to 9F by the Encoding Standard's index windows-1252: Node 20 leaves them control characters. */
function withSigns(text: string): string {
  return text.replace(/[\u0080-\u009f]/g, (control) => signs[control.charCodeAt(0) - 0x80] ?? control);
}

const signs =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';
