import type {Finding} from '../diagnostics/finding.ts';
import {sortFindings} from '../diagnostics/sort-findings.ts';
import type {Workspace} from '../io/workspace.ts';
import type {LayoutInput} from '../layout/layout-input.ts';
import {renderReprint} from '../layout/render-reprint.ts';
import {envelopeDocuments, renderRoundEnvelope} from '../layout/render-round-envelope.ts';
import {resubmissionRound} from '../layout/view-models/rework-round.ts';
import {itemsById} from '../model/binder.ts';
import type {PrintBrowser} from '../print/browser.ts';
import {plural} from '../support/plural.ts';
import {binderPdf, lastBuilt, reprintPdf} from './last-built.ts';
import {printDocument} from './print-documents.ts';

export interface PrintedRound {
  readonly files: ReadonlyMap<string, Uint8Array>;
  readonly findings: readonly Finding[];
}

/** Each item with its cover page and tag, a file an item. `progress` is told of each. */
export async function printItems(
  browser: PrintBrowser,
  workspace: Workspace,
  input: LayoutInput,
  ids: readonly string[],
  progress: (line: string) => void,
): Promise<PrintedRound> {
  const files = new Map<string, Uint8Array>();
  const findings: Finding[] = [];
  const binder = await lastBuilt(workspace, binderPdf);
  for (const id of ids) {
    const path = reprintPdf(id);
    const before = (await lastBuilt(workspace, path)) ?? binder;
    const document = await printDocument(
      browser,
      input.binder,
      `Resubmission of ${id}`,
      (counts) => renderReprint(input, [id], counts),
      before,
    );
    progress(`${id}: ${plural(document.pageCount, 'page')}`);
    files.set(path, document.pdf);
    findings.push(...document.findings);
  }
  return {files, findings: sortFindings(findings)};
}

/** A whole resubmission: the items, and the letter, packing list and label that go with them. */
export async function printRound(
  browser: PrintBrowser,
  workspace: Workspace,
  input: LayoutInput,
  ids: readonly string[],
  progress: (line: string) => void,
): Promise<PrintedRound> {
  const byId = itemsById(input.binder);
  const items = ids.flatMap((id) => byId.get(id) ?? []);
  const round = Math.max(1, ...items.map((item) => resubmissionRound(input.binder, item)));
  const printed = await printItems(browser, workspace, input, ids, progress);
  const files = new Map(printed.files);
  const findings = [...printed.findings];
  for (const document of envelopeDocuments) {
    const {pdf, findings: found} = await printDocument(
      browser,
      input.binder,
      `Round ${round}, ${document}`,
      () => renderRoundEnvelope(input, document, items, round),
    );
    files.set(`build/reprint/round-${round}-${document.replaceAll(' ', '-')}.pdf`, pdf);
    findings.push(...found);
  }
  return {files, findings: sortFindings(findings)};
}
