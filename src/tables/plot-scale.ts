/** An axis with ticks at multiples of a round step, wide enough for all values. */
export interface PlotScale {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly {readonly value: number; readonly label: string}[];
}

const mostIntervals = 6;

/**
 * The finest axis with steps of 1, 2 or 5 times a power of ten that covers `values` in at most six intervals, with
 * room on both sides. The step is at least `finest` tenths. At least one value, all finite and not below zero.
 */
export function plotScale(values: readonly number[], finest: number): PlotScale {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  for (let decade = 1; ; decade *= 10) {
    for (const step of [decade, 2 * decade, 5 * decade].filter((tenths) => tenths >= finest)) {
      const first = Math.max(0, Math.floor((least * 10) / step) - 1);
      const last = Math.ceil((most * 10) / step) + 1;
      if (last - first <= mostIntervals) return axis(first, last, step);
    }
  }
}

/** Ticks from `first` to `last` steps; `step` counts tenths, so that labels are exact. */
function axis(first: number, last: number, step: number): PlotScale {
  const ticks = Array.from({length: last - first + 1}, (_, index) => {
    const value = ((first + index) * step) / 10;
    return {value, label: value.toFixed(step % 10 === 0 ? 0 : 1)};
  });
  return {from: (first * step) / 10, to: (last * step) / 10, ticks};
}
