import {visibleText} from '../support/visible-text.ts';
import {wrapWords} from '../support/wrap-words.ts';
import type {Requirement} from './binder.ts';
import {type Clipping, clippingInShort} from './clippings.ts';
import {folderOfKind, type Kind} from './kinds.ts';
import {limitsInWords} from './limits-in-words.ts';
import {type StubUnits, stubFields} from './stub-fields.ts';
import {stubTexts} from './stub-text.ts';

const [stub] = stubTexts;
/** Letters in a line of notes. */
const noteWidth = 100;
/** Letters of the title in a file name, cut at a word. */
const nameLength = 60;

/** Where the stub of a requirement is laid, such as `content/swatches/s-07-double-decreases.md`: ASCII letters only. */
export function stubPath({id, kind, title}: Requirement): string {
  const words = plainLetters(title).split('-');
  while (words.join('-').length > nameLength) words.pop();
  const name = [id.toLowerCase(), ...words].filter((word) => word !== '').join('-');
  return `content/${folderOfKind[kind]}/${name}.md`;
}

/**
 * The file with which work on a requirement begins: what is asked and limited as notes, the fields in the order in which
 * they are filled in, `…` where something must be written. It is planned, so that nothing is asked of it yet.
 */
export function stubItem(
  requirement: Requirement,
  units: StubUnits,
  clippings: readonly Clipping[] = [],
): string {
  const {id, kind, limits} = requirement;
  const lines = [
    '---',
    ...notesOn(requirement, clippings).flatMap(noteLines),
    `requirement: ${id}`,
    `title: # ${kind === 'review' ? 'author and title of the source; ' : ''}the syllabus's title stands when this is empty`,
    'status: planned # then: in work, finished',
    ...stubFields(requirement, units),
    '---',
    stub,
    ...(kind === 'pattern' || limits.pattern === 'required' ? rowsBlock(kind) : []),
  ];
  return `${lines.join('\n')}\n`;
}

function notesOn(
  {id, title, asks, tiedTo, limits}: Requirement,
  clippings: readonly Clipping[],
): readonly string[] {
  const {words, sources, pattern, byEye} = limitsInWords(limits);
  const limited = [words, sources, pattern].filter((limit) => limit !== null);
  return [
    `${id}: ${title}`,
    ...(asks === null ? [] : [`Asked for: ${asks}`]),
    ...(tiedTo.length > 0 ? [`Belongs to: ${tiedTo.join(', ')}`] : []),
    ...(limited.length > 0 ? [`Limits: ${limited.join('; ')}`] : []),
    ...byEye.map((question) => `Look over: ${question}`),
    ...clippings.map((clipping) => `Clipping: ${clippingInShort(clipping)}`),
    'Your own words, in Markdown, come below the second line of hyphens.',
  ];
}

/** Nothing in a note can end it and begin a field. */
function noteLines(note: string): readonly string[] {
  const text = visibleText(note.replace(/\s+/g, ' ')).trim();
  return wrapWords(text, noteWidth, 2).map((line) => `# ${line}`);
}

/** Left empty: a row is read whatever the item's status, and `…` is none. */
function rowsBlock(kind: Kind): readonly string[] {
  return ['', ...(kind === 'pattern' ? [] : ['## Pattern', '']), '~~~rows', '~~~'];
}

function plainLetters(title: string): string {
  return title
    .replace(/[ßẞ]/g, 'ss')
    .replace(/[æÆ]/g, 'ae')
    .replace(/[œŒ]/g, 'oe')
    .replace(/[øØ]/g, 'o')
    .replace(/[łŁ]/g, 'l')
    .replace(/[đĐðÐ]/g, 'd')
    .replace(/[þÞ]/g, 'th')
    .normalize('NFKD')
    .replace(/\p{M}+|['’]/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
}
