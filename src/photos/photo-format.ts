export type PhotoFormat = 'jpeg' | 'png' | 'webp';

/**
 * Which of the three kinds of picture we print these bytes are, by their first bytes, or null. Nothing else reaches
 * the decoder, so that its readers for drawings, documents and rarer formats cannot be tried on files from strangers.
 *
 * Sources: JPEG, ITU-T T.81 (SOI marker); PNG, W3C Recommendation, section 5.2; WebP, RFC 9649, section 2.4.
 */
export function photoFormat(bytes: Uint8Array): PhotoFormat | null {
  const head = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 12)).toString('latin1');
  if (head.startsWith('\xff\xd8\xff')) return 'jpeg';
  if (head.startsWith('\x89PNG\r\n\x1a\n')) return 'png';
  if (head.startsWith('RIFF') && head.slice(8) === 'WEBP') return 'webp';
  return null;
}
