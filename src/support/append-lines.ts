/**
 * A text file with `lines` at its end, each ended as its other lines are; every byte that stood there stays, and a last
 * line that was not ended is. `before` is null for a new file.
 */
export function appendLines(before: Uint8Array | null, lines: readonly string[]): Uint8Array {
  const old = new TextDecoder().decode(before ?? new Uint8Array());
  const lineEnd = old.includes('\r\n') ? '\r\n' : '\n';
  const start = old === '' || old.endsWith('\n') ? '' : lineEnd;
  const added = Buffer.from(start + lines.map((line) => line + lineEnd).join(''));
  return Buffer.concat([before ?? new Uint8Array(), added]);
}
