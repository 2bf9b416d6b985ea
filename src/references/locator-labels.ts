import type {LocatorLabel} from './locator.ts';

/** How each locator label may be written, without a full stop; upper and lower case are the same. */
const writtenForms: Readonly<Record<LocatorLabel, readonly string[]>> = {
  page: ['p', 'pp', 'page', 'pages'],
  chapter: ['ch', 'chs', 'chap', 'chaps', 'chapter', 'chapters'],
  figure: ['fig', 'figs', 'figure', 'figures'],
  time: ['t', 'time'],
  volume: ['vol', 'vols', 'volume', 'volumes'],
  issue: ['no', 'nos', 'issue', 'issues'],
  section: ['§', '§§', 'sec', 'secs', 'sect', 'section', 'sections'],
  plate: ['pl', 'pls', 'plate', 'plates'],
  table: ['table', 'tables', 'tab', 'tabs'],
  paragraph: ['¶', '¶¶', 'para', 'paras', 'par', 'paragraph', 'paragraphs'],
};

const preferredForms: Readonly<Record<LocatorLabel, string>> = {
  page: 'p.',
  chapter: 'ch.',
  figure: 'fig.',
  time: 't.',
  volume: 'vol.',
  issue: 'no.',
  section: '§',
  plate: 'plate',
  table: 'table',
  paragraph: 'para.',
};

const labelByForm = new Map<string, LocatorLabel>();
for (const [label, forms] of Object.entries(writtenForms)) {
  // The keys of `writtenForms` are exactly the labels; `Object.entries` forgets that.
  for (const form of forms) labelByForm.set(form, label as LocatorLabel);
}

/** The label that `word` writes (`pp` → page), or null. */
export function locatorLabelOf(word: string): LocatorLabel | null {
  return labelByForm.get(word.toLowerCase()) ?? null;
}

/** How a label is best written before a number: `p.`, `ch.`, `§`. */
export function writtenLocatorLabel(label: LocatorLabel): string {
  return preferredForms[label];
}

export const locatorForms: readonly string[] = [...labelByForm.keys()];
