import type {BibField} from './bib-body.ts';
import type {BibEntry} from './read-bib.ts';

/**
 * The entry with the fields that it takes from the entry its `crossref` names, and so on up: what it has itself counts.
 * A book's or volume's title becomes the part's `booktitle`, a periodical's its `journaltitle` (BibLaTeX manual,
 * section 2.4.1.1 and appendix B).
 */
export function withParents(entry: BibEntry, byKey: ReadonlyMap<string, BibEntry>): BibEntry {
  const seen = new Set<BibEntry>([entry]);
  const fields = [...entry.fields];
  const has = new Set(fields.map(({name}) => name));
  let child = entry;
  for (;;) {
    const key = child.fields.find(({name}) => name === 'crossref')?.text.trim();
    const parent = key === undefined ? undefined : byKey.get(key);
    if (parent === undefined || seen.has(parent) || seen.size > mostParents) return {...entry, fields};
    seen.add(parent);
    for (const field of parent.fields) {
      const name = inheritedName(field, entry.type, parent.type);
      if (name === null || has.has(name)) continue;
      has.add(name);
      fields.push({name, text: field.text});
    }
    child = parent;
  }
}

const mostParents = 3;
/** Said of the parent alone. */
const ownFields = new Set([
  'crossref',
  'xref',
  'ids',
  'keywords',
  'shorttitle',
  'sorttitle',
  'label',
  'pages',
  'note',
  'abstract',
  'file',
]);

function inheritedName({name}: BibField, type: string, parentType: string): string | null {
  if (ownFields.has(name)) return null;
  if (type === parentType) return name === 'title' || name === 'subtitle' ? null : name;
  if (name === 'title' || name === 'subtitle')
    return `${parentType === 'periodical' ? 'journal' : 'book'}${name}`;
  const isBook = parentType === 'book' || parentType === 'mvbook';
  return name === 'author' && isBook ? 'bookauthor' : name;
}
