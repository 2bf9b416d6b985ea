import {type DocumentParts, documentHtml} from './document.ts';
import {layoutEngine} from './layout-engine.ts';
import type {LayoutInput} from './layout-input.ts';
import {errorsOn, pageRules} from './page-rules.ts';
import type {PlannedSheet} from './planned-sheet.ts';
import type {PageCounts, Printable} from './printable.ts';

const styles = [
  'styles/page.css',
  'styles/type.css',
  'styles/sheets.css',
  'styles/computed.css',
  'styles/papers.css',
  'styles/cut-outs.css',
];

interface RenderWishes extends Pick<Printable, 'sides'> {
  /** What is done to the HTML at the end. */
  readonly finish?: (html: string) => string;
}

/** Renders planned sheets, each from its own template, into one document with leaf numbers. */
export function renderSheets(
  input: LayoutInput,
  title: string,
  sheets: readonly PlannedSheet[],
  counts: PageCounts,
  {finish = (html) => html, ...sides}: RenderWishes = {},
): Printable {
  let html: string | undefined;
  return {
    get html() {
      html ??= finish(documentHtml(input, sheetParts(input, title, sheets, counts), 'used fonts'));
      return html;
    },
    ...sides,
    // A sheet by itself counts its pages while it is printed, and what is cut out bears no number.
    usesCounts: sheets.length > 1 && sheets.some(({page}) => page !== 'cutting sheet'),
    sheets: sheets.map((sheet) => ({
      anchor: sheet.anchor,
      label: sheet.label,
      title: sheet.title,
      blank: sheet.blank,
      isDraft: input.notesAtHead !== undefined || errorsOn(sheet, input) > 0,
    })),
  };
}

/** What the document of `renderSheets` is made of. */
export function sheetParts(
  input: LayoutInput,
  title: string,
  sheets: readonly PlannedSheet[],
  counts: PageCounts,
): DocumentParts {
  const engine = layoutEngine(input.templates, input.binder.settings.language);
  const body = engine.render('document.hbs', {
    sheets: sheets.map(({anchor, label, blank, layout, view}) => ({
      anchor,
      label: blank ? `${label} back` : label,
      layout,
      content: `${blank ? '' : (input.notesAtHead?.get(label) ?? '')}${engine.render(`sheets/${layout}.hbs`, view)}`,
    })),
  });
  return {
    title,
    styles: [...styles, ...themeStyles(input, sheets), ...draftStyles(input)],
    pageRules: pageRules(input, sheets, counts),
    body,
  };
}

/** What is cut out has a size of its own, and its type suits that in every theme. */
function themeStyles({binder}: LayoutInput, sheets: readonly PlannedSheet[]): readonly string[] {
  const {theme} = binder.settings;
  const isCutOut = sheets.some(({page}) => page === 'cutting sheet');
  return theme === 'usual' || isCutOut ? [] : [`themes/${theme}.css`];
}

/** Notes need a look only where there are any: other documents stay as they are to the byte. */
function draftStyles({binder, notesAtHead}: LayoutInput): readonly string[] {
  const {theme} = binder.settings;
  if (notesAtHead === undefined) return [];
  return ['styles/draft.css', ...(theme === 'usual' ? [] : [`themes/${theme}-draft.css`])];
}
