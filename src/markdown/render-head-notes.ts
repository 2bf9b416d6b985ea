import {h} from 'hastscript';
import type {Finding} from '../diagnostics/finding.ts';
import type {SafeHtml} from '../model/composed.ts';
import {findingNote} from './finding-note.ts';
import {fragmentReader} from './processor.ts';

/** The findings that stand at the head of a sheet; each with its file where that is not the sheet's own. */
export function renderHeadNotes(findings: readonly Finding[], ownFiles: readonly string[]): SafeHtml {
  const notes = findings.map((finding) =>
    ownFiles.includes(finding.file)
      ? findingNote(finding)
      : findingNote(finding, `${finding.file}, line ${finding.place.line}`),
  );
  // Built by us from elements, with every text escaped on writing: nothing of the author's is markup in it.
  return fragmentReader.stringify({
    type: 'root',
    children: [h('div', {className: ['notes-at-head']}, notes)],
  }) as SafeHtml;
}
