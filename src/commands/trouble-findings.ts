import {type Finding, fileStart, type Severity} from '../diagnostics/finding.ts';
import type {Sheet} from '../layout/printable.ts';
import {type Binder, itemsById} from '../model/binder.ts';
import type {PrintTrouble} from '../print/print-job.ts';
import type {YamlPath} from '../yaml/places.ts';

const remedies: Readonly<Record<PrintTrouble['kind'], readonly [Severity, string, string]>> = {
  overflow: ['error', 'does not fit', 'Break or shorten what is named.'],
  'missing picture': ['error', 'a picture was not printed', 'Save the picture again as JPEG or PNG.'],
  'missing font': ['error', 'a font was not loaded', 'Install Swatchleaf again (`npm ci` in a clone).'],
  'missing glyph': [
    'warning',
    'a character is not in our fonts and was printed in another',
    'Write another character in its place, or spell it out.',
  ],
  'broken link': ['error', 'a link leads to no leaf', 'Write the id of an item that is in the binder.'],
  'request refused': [
    'warning',
    'something on the page was to be fetched',
    'Take it out of the layout: pages are printed from what is in the binder alone.',
  ],
  'unsettled pages': [
    'error',
    'the leaf numbers do not settle',
    'Take the leaf numbers out of your own layout, or give them boxes of one width.',
  ],
};

/** What would make a printed page wrong, as findings of the item or the setting that it comes from. */
export function troubleFindings(
  binder: Binder,
  sheets: readonly Sheet[],
  troubles: readonly PrintTrouble[],
): readonly Finding[] {
  const labels = new Map(sheets.map(({anchor, label}) => [anchor, label]));
  return troubles.map(({kind, anchor, within, detail}) => {
    const [severity, fact, hint] = remedies[kind];
    const label = anchor === null ? undefined : labels.get(anchor);
    return {
      rule: printedPageRule.id,
      severity,
      ...sourceOf(binder, label, within ?? null),
      message: `on ${label === undefined ? 'a leaf' : `leaf \`${label}\``}: ${fact}: ${detail}`,
      hint: kind === 'overflow' && idOfTag(within ?? null) !== null ? hintForTag : hint,
    };
  });
}

const hintForTag = 'Shorten what is named, or make the tag larger: `tags` in `content/binder.yaml`.';

/** The id of the item whose tag has this id on its sheet. */
function idOfTag(id: string | null): string | null {
  return /^(?:tag-of|reverse-of-tag)-(.+)$/.exec(id ?? '')?.[1] ?? null;
}

/** Sheets that are made from the settings, by their label. */
const settingsOf: Readonly<Record<string, YamlPath>> = {
  Title: ['certificate'],
  Tags: ['tags'],
  Spine: ['inserts', 'spine'],
  Cover: ['inserts', 'cover'],
  'Tab strips': ['inserts', 'tabs'],
};

/** The file and place of what stands on a sheet: a tag's title, an item's file, a section's tab, a setting. */
function sourceOf(
  binder: Binder,
  label: string | undefined,
  within: string | null,
): Pick<Finding, 'file' | 'place'> {
  const {settingsFile, settingsPlaces, syllabus} = binder;
  const items = itemsById(binder);
  const tagged = items.get(idOfTag(within) ?? '');
  if (tagged !== undefined) return {file: tagged.file, place: tagged.places.value(['title'])};
  const item = items.get(label?.split(' ')[0] ?? '');
  if (item !== undefined) return {file: item.file, place: fileStart};
  const tab = /^Tab (\d+)$/.exec(label ?? '')?.[1];
  if (tab !== undefined) {
    const section: YamlPath = ['sections', Number(tab) - 1];
    const named = syllabus.places.has([...section, 'tab']) ? 'tab' : 'title';
    return {file: syllabus.file, place: syllabus.places.value([...section, named])};
  }
  const setting = settingsOf[label ?? ''];
  const place = setting === undefined ? fileStart : settingsPlaces.value(setting);
  return {file: settingsFile, place};
}

/** The one law that only printing can check. */
export const printedPageRule = {
  id: 'printed-page',
  summary: 'what is on a page fits it, with every picture, character and link',
  severity: 'error',
  explanation:
    'Found while printing: a box that does not fit its leaf, a picture or font that did not load, a character that our fonts lack, ' +
    'a link that leads nowhere. The finding names the leaf and the words to look for.',
} as const;
