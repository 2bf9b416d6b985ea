import type {BenchRow, BenchRun} from './bench-record.ts';
import {verdictOf} from './bench-record.ts';

/** A run as Markdown: what it was measured on, then a table with a row for each figure. */
export function benchTable(run: BenchRun): string {
  const rows = run.rows.map((row) => [
    row.what,
    measured(row),
    row.target === null ? '' : `≤ ${figure(row.target, row.unit)}`,
    verdictOf(row),
  ]);
  return `${describeRun(run)}\n\n${markdownTable(['what', 'measured', 'target', ''], rows)}`;
}

/** One row as a line for a terminal. */
export function benchLine(row: BenchRow): string {
  const target = row.target === null ? '' : ` (at most ${figure(row.target, row.unit)})`;
  const spread =
    row.quartiles === null
      ? ''
      : `, half of ${row.runs} between ${row.quartiles.map((each) => figure(each, row.unit)).join(' and ')}`;
  const detail = row.detail === '' || row.measured === null ? '' : `\n    ${row.detail}`;
  return `${verdictOf(row)}: ${row.what}: ${measured(row)}${target}${spread}${detail}`;
}

/** The machine, the versions and how it was measured, in two sentences. */
export function describeRun({date, commit, machine, versions, runs, load}: BenchRun): string {
  const programs = Object.entries(versions)
    .filter(([name]) => name !== 'swatchleaf')
    .map(([name, version]) => (name === 'browser' ? version : `${name} ${version}`));
  return [
    `Measured on ${date.slice(0, 10)} at ${commit}: ${machine.processor}, ${machine.cores} cores, ${machine.memory}, ${machine.system}; ${programs.join(', ')}.`,
    `Medians of ${runs} runs, each beside its floor; ${load.before.toFixed(1)} to ${load.after.toFixed(1)} processes wanted a core meanwhile.`,
  ].join(' ');
}

export function markdownTable(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = [heads, ...rows].map((row) => row.map((cell) => cell.replaceAll('|', '\\|')));
  const widths = heads.map((_, column) => Math.max(3, ...cells.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]) =>
    `| ${widths.map((width, column) => (row[column] ?? '').padEnd(width)).join(' | ')} |`;
  const [head = [], ...body] = cells;
  return [line(head), line(widths.map((width) => '-'.repeat(width))), ...body.map(line), ''].join('\n');
}

function measured({measured, unit, against, detail}: BenchRow): string {
  if (measured === null) return detail;
  return against === null ? figure(measured, unit) : `${figure(measured, unit)} ${against}`;
}

function figure(value: number, unit: BenchRow['unit']): string {
  if (unit === '×') return `${value.toFixed(2)} ×`;
  return `${value.toLocaleString('en-GB', {maximumFractionDigits: value < 10 ? 1 : 0})} ms`;
}
