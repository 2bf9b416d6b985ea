import type {PreviewFindings, PreviewMessage, PreviewNote, PreviewPage} from '../preview-state.ts';
import type {ShellDocument, ShellElement, ShellEvents, ShellFrame} from './shell-types.ts';

declare const document: ShellDocument;
declare const EventSource: new (address: string) => ShellEvents;
declare function fetch(address: string, options: {readonly method: string}): Promise<unknown>;

/**
 * Runs in the shell page. Puts each new version of the shown item into the frame without loading it anew, so that the
 * reader's place is kept, and sets the findings beside the blocks that caused them.
 *
 * One long function, since it is sent to the browser as its own text and can call nothing outside itself.
 */
export function followPreview(): void {
  const frame = document.getElementById('sheet') as ShellFrame;
  const noteStyle =
    '@media screen{body{max-width:none!important;margin:0 74mm 0 0!important;padding:8mm!important}' +
    '.preview-note{position:absolute;right:4mm;width:62mm;padding:2mm 3mm;border-left:1mm solid #8a6d1c;background:#fbf6e6;' +
    'font:10pt/1.35 system-ui,sans-serif;color:#2d2926;overflow-wrap:anywhere}' +
    '.preview-note.error{border-color:#8a1c1c;background:#fbeaea}.preview-note.info{border-color:#5b534c;background:#f4f1ec}' +
    '.preview-note b{font-weight:600}.preview-note i{display:block;margin-top:1mm;font-style:normal;color:#5b534c}}';
  let page: PreviewPage | null = null;
  let findings: PreviewFindings | null = null;

  function make(tag: string, className: string, text: string): ShellElement {
    const element = document.createElement(tag);
    element.className = className;
    element.textContent = text;
    return element;
  }

  function showPage(next: PreviewPage): void {
    const isSame = page !== null && page.id === next.id && page.head === next.head;
    page = next;
    document.getElementById('shown').textContent = next.id;
    document.getElementById('trouble').textContent = next.trouble ?? '';
    const inner = frame.contentDocument;
    if (!isSame || inner === null || inner.body === null) {
      frame.onload = () => showNotes();
      frame.src = `item/${encodeURIComponent(next.id)}`;
      return;
    }
    const place = inner.documentElement.scrollTop;
    inner.body.innerHTML = next.body;
    showNotes();
    inner.documentElement.scrollTop = place;
  }

  /** Each note stands at the height of the last block that begins on its line or before it, or below the note above. */
  function showNotes(): void {
    const inner = frame.contentDocument;
    if (inner === null || inner.body === null || findings === null || page === null) return;
    for (const old of [...inner.querySelectorAll('.preview-note, .preview-style')]) old.remove();
    if (findings.shown !== page.id) return;
    const style = make('style', 'preview-style', noteStyle);
    inner.body.append(style);
    const blocks = [...inner.querySelectorAll('[data-line]')].map((element) => ({
      line: Number(element.getAttribute('data-line')),
      top: element.getBoundingClientRect().top + inner.documentElement.scrollTop,
    }));
    let free = 8;
    for (const note of findings.notes) {
      const beside = blocks.filter(({line}) => line <= note.line).at(-1);
      const element = noteElement(note);
      inner.body.append(element);
      const top = Math.max(free, beside?.top ?? 8);
      element.style.top = `${top}px`;
      free = top + element.getBoundingClientRect().height + 8;
    }
  }

  /** What stands between backticks is a word of the file. */
  function inWords(text: string): ShellElement[] {
    return text.split('`').map((part, index) => make(index % 2 === 1 ? 'code' : 'span', '', part));
  }

  function noteElement({line, severity, message, hint}: PreviewNote): ShellElement {
    const element = make('aside', `preview-note ${severity}`, '');
    const fact = make('span', '', '');
    fact.append(...inWords(message));
    const advice = make('i', '', '');
    advice.append(...inWords(hint));
    element.append(make('b', '', `Line ${line}: `), fact, advice);
    return element;
  }

  function showFindings(next: PreviewFindings): void {
    findings = next;
    document.getElementById('counts').textContent = next.counts;
    const elsewhere = document.getElementById('elsewhere');
    elsewhere.replaceChildren(...next.elsewhere.map((line) => make('li', '', line)));
    const groups = next.sections.map(({title, items}) => {
      const group = make('div', '', '');
      group.append(make('h2', '', title));
      for (const item of items) {
        const button = make('button', '', '');
        const count = item.errors + item.warnings;
        button.append(
          make('span', 'id', item.id),
          make('span', 'title', item.title),
          make('span', 'mark', count > 0 ? String(count) : ''),
        );
        button.setAttribute('title', `${item.title}: ${item.state}`);
        if (item.id === next.shown) button.setAttribute('aria-current', 'true');
        button.onclick = () => {
          void fetch(`choose/${encodeURIComponent(item.id)}`, {method: 'POST'});
        };
        group.append(button);
      }
      return group;
    });
    document.getElementById('items').replaceChildren(...groups);
    showNotes();
  }

  new EventSource('changes').onmessage = ({data}) => {
    const message: PreviewMessage = JSON.parse(data);
    if (message.kind === 'page') showPage(message.page);
    else showFindings(message.findings);
  };
}
