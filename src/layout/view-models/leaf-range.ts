/** The first and last page of a sheet as its leaf numbers count them, such as `1–3`; null when not yet known. */
export function leafRange(pages: number | undefined): string | null {
  if (pages === undefined) return null;
  return pages === 1 ? '1' : `1–${pages}`;
}
