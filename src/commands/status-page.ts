import {gaugeInWords} from '../compose/gauge-in-words.ts';
import {renderStatus} from '../layout/render-status.ts';
import type {Outcome, Surroundings} from './command.ts';
import {loadLayouts} from './load-layouts.ts';
import {openBinder} from './open-binder.ts';

/** Writes `build/status.html`: how far the binder is, for a browser and for paper. Nothing is composed for it. */
export async function runStatusPage(folder: string, around: Surroundings): Promise<Outcome> {
  const opened = await openBinder(folder, around);
  const {binder, findings, textOf, workspace} = opened;
  if (binder === null) return {findings, textOf, written: [], isBroken: true};
  const path = 'build/status.html';
  const {html} = renderStatus({
    ...(await loadLayouts(workspace)),
    binder,
    composed: new Map(),
    references: [],
    draft: null,
    findings,
    gaugeInWords: (measured) => gaugeInWords(measured, binder.settings.units),
  });
  await workspace.write(path, html);
  return {findings: [], textOf, written: [path], isBroken: false};
}
