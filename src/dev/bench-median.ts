/** The middle one, or halfway between the two in the middle; not a number when there are none. */
export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

/** The first and the third quartile; null for fewer than three values, of which they would say nothing. */
export function quartiles(values: readonly number[]): [number, number] | null {
  return values.length < 3 ? null : [quantile(values, 0.25), quantile(values, 0.75)];
}

/** Between the two nearest values in proportion (Hyndman and Fan 1996, definition 7, doi 10.1080/00031305.1996.10473566). */
function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const below = sorted[Math.floor(place)] ?? Number.NaN;
  const above = sorted[Math.ceil(place)] ?? Number.NaN;
  return below + (above - below) * (place - Math.floor(place));
}
