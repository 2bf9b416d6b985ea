/** `1204` → `1,204`. */
export function groupThousands(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}

/** What is asked, in words: `900 to 1,200`, `at least 900`, `up to 500`; null when nothing is. */
export function askedRange({
  from,
  to,
}: {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}): string | null {
  if (from !== undefined && to !== undefined) return `${groupThousands(from)} to ${groupThousands(to)}`;
  if (from !== undefined) return `at least ${groupThousands(from)}`;
  return to === undefined ? null : `up to ${groupThousands(to)}`;
}
