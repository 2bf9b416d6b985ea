import {constant, type LinearForm} from './linear-form.ts';

/** How counts are compared: for one number of stitches, or for every number of repeats at once. */
export interface Law {
  /** The count divided by `by`, when that is whole for every n; the reason when it is not. */
  divide(count: LinearForm, by: number): LinearForm | {readonly remainder: number};
  /** Below, equal to or above zero: −1, 0, 1. */
  signOf(count: LinearForm): -1 | 0 | 1;
}

/** Of plain numbers. */
export const plainLaw: Law = {
  divide({fixed}, by) {
    const remainder = ((fixed % by) + by) % by;
    return remainder === 0 ? constant(fixed / by) : {remainder};
  },
  signOf: ({fixed}) => (fixed < 0 ? -1 : fixed > 0 ? 1 : 0),
};

/** A division is whole only when t leaves `rest` on division by `every`: prove it again for those alone. */
export class OnlyWhen {
  readonly every: number;
  readonly rest: number;

  constructor(every: number, rest: number) {
    this.every = every;
    this.rest = rest;
  }
}

/** For all t ≥ `from` at once, where every count is a linear form in t. */
export class LawForAll implements Law {
  /** Rises as comparisons need it. */
  from: number;

  constructor(from: number) {
    this.from = from;
  }

  /** Throws `OnlyWhen` when the division is whole for some t and not for others. */
  divide(count: LinearForm, by: number): LinearForm | {readonly remainder: number} {
    const {each, fixed} = count;
    if (each % by === 0) {
      const remainder = ((fixed % by) + by) % by;
      return remainder === 0 ? {each: each / by, fixed: fixed / by} : {remainder};
    }
    const solved = solveCongruence(each, -fixed, by);
    if (!solved) return {remainder: ((fixed % by) + by) % by};
    throw solved;
  }

  /** A form that grows is judged where it has settled; `from` rises to there. */
  signOf({each, fixed}: LinearForm): -1 | 0 | 1 {
    if (each === 0) return fixed < 0 ? -1 : fixed > 0 ? 1 : 0;
    this.from = Math.max(this.from, Math.floor(-fixed / each) + 1);
    return each < 0 ? -1 : 1;
  }
}

/** All t with a·t ≡ b (mod m), by the extended Euclidean algorithm; null when there is none. */
export function solveCongruence(a: number, b: number, m: number): OnlyWhen | null {
  let [r0, r1, s0, s1] = [((a % m) + m) % m, m, 1, 0];
  while (r1 !== 0) {
    const quotient = Math.floor(r0 / r1);
    [r0, r1] = [r1, r0 - quotient * r1];
    [s0, s1] = [s1, s0 - quotient * s1];
  }
  if (b % r0 !== 0) return null;
  const every = m / r0;
  const factor = ((s0 % every) + every) % every;
  const scaled = (((b / r0) % every) + every) % every;
  return new OnlyWhen(every, Number((BigInt(factor) * BigInt(scaled)) % BigInt(every)));
}
