/** A count that grows with the number of pattern repeats n: `each` · n + `fixed`. Both are whole numbers. */
export interface LinearForm {
  readonly each: number;
  readonly fixed: number;
}

export const none: LinearForm = {each: 0, fixed: 0};

export function constant(fixed: number): LinearForm {
  return {each: 0, fixed};
}

export function plus(a: LinearForm, b: LinearForm): LinearForm {
  return {each: a.each + b.each, fixed: a.fixed + b.fixed};
}

export function minus(a: LinearForm, b: LinearForm): LinearForm {
  return {each: a.each - b.each, fixed: a.fixed - b.fixed};
}

export function times(form: LinearForm, factor: number): LinearForm {
  return {each: form.each * factor, fixed: form.fixed * factor};
}

export function isSame(a: LinearForm, b: LinearForm): boolean {
  return a.each === b.each && a.fixed === b.fixed;
}

/** False once a count has outgrown what is computed exactly. */
export function isExact(form: LinearForm): boolean {
  return Number.isSafeInteger(form.each) && Number.isSafeInteger(form.fixed);
}

/** `6 · n + 5`, `6 · n`, `n + 1`, `29`. */
export function showForm({each, fixed}: LinearForm): string {
  if (each === 0) return `${fixed}`;
  const repeats = each === 1 ? 'n' : `${each} · n`;
  if (fixed === 0) return repeats;
  return `${repeats} ${fixed < 0 ? '−' : '+'} ${Math.abs(fixed)}`;
}
