import type {BinderSettings} from '../model/schema/binder-settings.ts';
import {plural} from '../support/plural.ts';
import {spellFractions} from './compose-fractions.ts';
import {cssString} from './css-string.ts';
import type {LayoutInput} from './layout-input.ts';
import {pageBackground} from './page-background.ts';
import {type Paper, pageMargins, paperOf, textArea} from './paper.ts';
import type {BoundPage, PlannedSheet} from './planned-sheet.ts';
import type {PageCounts} from './printable.ts';
import {candidateForFoot, shortenForHead} from './running-text.ts';
import {tabPlace, tabShape} from './tab-place.ts';

type Side = 'recto' | 'verso';

/** What is printed in place of a number that is not known before the first printing; as wide as a digit. */
const placeholder = '\u2007';

/**
 * The rules that give each sheet a page of its own name: size, margins on the ring side, hole marks, running head,
 * and leaf numbers that count within the sheet.
 */
export function pageRules(
  {binder: {settings}, draft, notesAtHead}: Pick<LayoutInput, 'binder' | 'draft' | 'notesAtHead'>,
  sheets: readonly PlannedSheet[],
  counts: PageCounts,
): string {
  const paper = paperOf(settings);
  const sides: readonly Side[] = settings.sides === 'duplex' ? ['recto', 'verso'] : ['recto'];
  const text = textArea(paper);
  const rules = [
    `:root{--text-width:${text.width}px;--text-height:${text.height}px}`,
    ...sides.map((side) => baseRule(paper, side)),
  ];
  sheets.forEach((sheet, index) => {
    const name = `leaf${index + 1}`;
    rules.push(`#${sheet.anchor}{page:${name}}`);
    if (sheet.page === 'cutting sheet') {
      const size = sheet.paper && `size:${sheet.paper.width}mm ${sheet.paper.height}mm;`;
      rules.push(`@page ${name}{${size ?? ''}margin:0;background:none}`);
      return;
    }
    const total = sheets.length === 1 ? 'counter(pages)' : totalOf(sheet, counts);
    const texts = {
      head: headTexts(sheet, sheet.page, notesAtHead ? 'draft' : errorMark(errorsOn(sheet, {draft}))),
      foot: footTexts(sheet, sheet.page, settings, `counter(${name}) " of " ${total}`),
    };
    rules.push(`@page ${name}{counter-increment:${name}}`);
    for (const side of sides) {
      rules.push(`@page ${name}${pseudo(side)}{${edge(sheet.page, paper, side)}${marginBoxes(side, texts)}}`);
    }
  });
  return rules.join('\n');
}

/** The errors that a sheet's leaves are marked with; 0 when they may be posted. */
export function errorsOn(
  {errors}: Pick<PlannedSheet, 'errors'>,
  {draft}: Pick<LayoutInput, 'draft'>,
): number {
  return errors ?? draft?.errors ?? 0;
}

export function draftMark(errors: number): string {
  return `Draft: ${plural(errors, 'error stands', 'errors stand')}`;
}

function pseudo(side: Side): string {
  return side === 'verso' ? ':left' : '';
}

function baseRule(paper: Paper, side: Side): string {
  const {top, bottom, ring, outer} = pageMargins;
  const [right, left] = side === 'recto' ? [outer, ring] : [ring, outer];
  return (
    `@page${pseudo(side)}{size:${paper.width}mm ${paper.height}mm;margin:${top}px ${right}px ${bottom}px ${left}px;` +
    `background:${pageBackground(paper, {side, edge: null})}}`
  );
}

function totalOf({anchor}: PlannedSheet, counts: PageCounts): string {
  return cssString(counts?.get(anchor)?.toString() ?? placeholder);
}

/** Texts in the margins, as CSS values of `content`. */
interface MarginTexts {
  readonly head: readonly [inner: string, middle: string, outer: string];
  readonly foot: readonly [inner: string, outer: string];
}

function headTexts(
  {title, label}: PlannedSheet,
  {hasHead}: BoundPage,
  markText: string,
): MarginTexts['head'] {
  const mark = cssString(markText);
  const short = shortenForHead(title, markText === '' ? 'alone' : 'besideMark');
  return hasHead ? [cssString(short), mark, cssString(label)] : ['""', mark, '""'];
}

function errorMark(errors: number): string {
  return errors === 0 ? '' : draftMark(errors);
}

/** The candidate's name is there so that a leaf that has come loose finds its way back. */
function footTexts(
  {label, blank}: PlannedSheet,
  {isNumbered}: BoundPage,
  {candidate}: BinderSettings,
  number: string,
): MarginTexts['foot'] {
  const name = cssString(candidateForFoot(candidate.name, candidate.number));
  if (!isNumbered) return [name, '""'];
  return [name, blank ? cssString(`${label} · back`) : `${cssString(`${label} · `)} ${number}`];
}

/**
 * The outer side carries what a leafing thumb looks for: the id above, the leaf number below. They stay on one line. The
 * head has a box in its middle only for a mark: even an empty one takes room from the others.
 */
function marginBoxes(side: Side, {head, foot}: MarginTexts): string {
  const [inner, outer] = side === 'recto' ? ['left', 'right'] : ['right', 'left'];
  return (
    `@top-${inner}{content:${head[0]};text-align:${inner};font-weight:400;white-space:normal}` +
    `@top-center{content:${head[1] === '""' ? 'none' : head[1]};white-space:nowrap}` +
    `@top-${outer}{content:${head[2]};text-align:${outer};font-weight:600;white-space:nowrap}` +
    `@bottom-${inner}{content:${foot[0]};text-align:${inner};font-weight:400;white-space:normal}` +
    `@bottom-${outer}{content:${foot[1]};text-align:${outer};font-weight:600;white-space:nowrap}`
  );
}

/** The drawing at the outer edge and, on a divider, the tab's text. A divider is always a right-hand page. */
function edge({edge: mark}: BoundPage, paper: Paper, side: Side): string {
  if (mark === null) return '';
  const background = `background:${pageBackground(paper, {side, edge: mark})};`;
  if (mark.drawn === 'thumb') return background;
  const {x, y, width, height} = tabPlace(mark.place, paper);
  const {bevel} = tabShape;
  return (
    `${background}@right-top{content:${cssString(spellFractions(mark.text))};` +
    `margin-top:calc(${y + bevel}mm - ${pageMargins.top}px);height:${height - 2 * bevel}mm;` +
    `margin-left:calc(${pageMargins.outer}px - ${paper.width - x}mm);width:${width}mm}`
  );
}
