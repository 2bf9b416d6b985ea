import type {CitationParsers} from './citation-parsers.ts';
import type {CslRecord} from './csl-record.ts';
import {readDate} from './read-date.ts';
import {mostNames, readNames, withParticle} from './read-names.ts';
import type {RisLine, RisRecord} from './read-ris.ts';

/**
 * A RIS record as CSL-JSON. citation-js knows what a tag means in which type (RIS format specification, 2011); where it
 * knows nothing, the older meaning of the tag is taken (2001). A type that there is not is read as `GEN`.
 */
export function risToCsl(record: RisRecord, parsers: CitationParsers): CslRecord {
  const tags = tagsOf(record.lines);
  const said = parsers.risRecord({TY: typeNames[record.type] ?? record.type, ...tags});
  const known = said?.type === undefined ? parsers.risRecord({TY: 'GEN', ...tags}) : said;
  return corrected(record, known ?? {}, said?.type);
}

/** Names that programs write for types of the specification. */
const typeNames: Readonly<Record<string, string>> = {WEB: 'ELEC', JOURN: 'JOUR'};
const nameTags = new Set(['AU', 'A1', 'A2', 'A3', 'A4', 'ED']);
/** The author of a translation would take the author's place; files and accession numbers are no reference. */
const passedOver = new Set(['TA', 'ID', 'L1', 'L2', 'L3', 'L4', 'LK', 'AN', 'DB']);

/** Tags of which more than one line is taken. */
export const listTags: ReadonlySet<string> = new Set([...nameTags, 'N1']);

/** One text a tag as the parser wants it, the first; names as a list, notes one after the other. */
function tagsOf(lines: readonly RisLine[]): Readonly<Record<string, string | readonly string[]>> {
  const tags = new Map<string, string[]>();
  for (const {tag, text} of lines) {
    if (text !== '' && !passedOver.has(tag))
      tags.set(tag, [...(tags.get(tag) ?? []).slice(0, mostLines), text]);
  }
  const entries = [...tags].map(([tag, texts]): [string, string | readonly string[]] => {
    if (nameTags.has(tag)) return [tag, texts];
    return [tag, tag === 'N1' ? texts.join(' ') : (texts[0] ?? '')];
  });
  return Object.fromEntries(entries);
}

const mostLines = mostNames;

const periodicals = ['JOUR', 'JOURN', 'EJOUR', 'JFULL', 'MGZN', 'NEWS', 'ABST', 'INPR'];
const wholeWorks = ['BOOK', 'EDBOOK', 'EBOOK', 'THES', 'RPRT', 'PAMP', 'CLSWK', 'ANCIENT', 'UNPB', 'MANSCPT'];

/** What the parser reads otherwise than the specification says or people write. */
function corrected({type, lines}: RisRecord, csl: CslRecord, cslType: unknown): CslRecord {
  const all = (tag: string) =>
    lines.filter((line) => line.tag === tag && line.text !== '').map(({text}) => text);
  const first = (...tags: readonly string[]) => tags.flatMap(all)[0];
  const isWhole = wholeWorks.includes(type);
  const container = isWhole ? undefined : csl['container-title'];
  const dates = ['DA', 'PY', 'Y1'].flatMap(all);
  return {
    ...csl,
    type: type === 'MPCT' ? 'motion_picture' : cslType,
    title: csl.title ?? first('TI', 'T1', 'CT', 'BT'),
    author: people(csl.author ?? csl.reporter),
    editor: people(csl.editor ?? (all('ED').length > 0 ? all('ED') : undefined)),
    translator: people(csl.translator),
    director: people(csl.director),
    'container-title': periodicals.includes(type) ? first('T2', 'JF', 'JO', 'J2', 'JA') : container,
    issued: dates.find((date) => readDate(date) !== null) ?? dates[0],
    accessed: first('Y2') ?? csl.accessed,
    page: isWhole ? undefined : csl.page,
    'number-of-pages': isWhole ? (csl['number-of-pages'] ?? first('SP')) : undefined,
    URL: csl.URL ?? first('UR'),
    DOI: csl.DOI ?? first('DO'),
  };
}

function people(value: unknown): unknown {
  return value === undefined ? undefined : readNames(value).names.map(withParticle);
}
