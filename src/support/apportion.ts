/**
 * Shares `whole` units out among `weights` in their proportion, by largest remainders (Hamilton's method); whatever
 * weighs anything gets one unit at least, as long as there are enough. Weights are whole and not below zero.
 */
export function apportion(weights: readonly number[], whole: number): readonly number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (total === 0) return weights.map(() => 0);
  const exact = weights.map((weight) => (weight * whole) / total);
  const shares = exact.map((share, index) => Math.max(Math.floor(share), (weights[index] ?? 0) > 0 ? 1 : 0));
  const given = () => shares.reduce((sum, share) => sum + share, 0);
  const over = (index: number) => (shares[index] ?? 0) - (exact[index] ?? 0);
  const order = weights.map((_, index) => index);
  while (given() < whole) {
    const [most = 0] = order.toSorted((a, b) => over(a) - over(b));
    shares[most] = (shares[most] ?? 0) + 1;
  }
  while (given() > whole) {
    const [least] = order.filter((index) => (shares[index] ?? 0) > 1).toSorted((a, b) => over(b) - over(a));
    if (least === undefined) break;
    shares[least] = (shares[least] ?? 0) - 1;
  }
  return shares;
}
