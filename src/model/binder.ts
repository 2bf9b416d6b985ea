import type {Finding, Place} from '../diagnostics/finding.ts';
import type {Citation} from '../references/citation.ts';
import type {OwnStyle} from '../references/own-style.ts';
import type {Source} from '../references/source.ts';
import type {Places} from '../yaml/places.ts';
import type {Body} from './body.ts';
import type {Clipping} from './clippings.ts';
import type {Kind} from './kinds.ts';
import type {AssessmentData} from './schema/assessment.ts';
import type {BinderSettings, RuleSetting} from './schema/binder-settings.ts';
import type {FieldsOf} from './schema/item-fields.ts';
import type {LedgerEntry} from './schema/print-ledger.ts';
import type {SentRoundData} from './schema/sent-round.ts';
import type {Limits} from './schema/syllabus.ts';

/** One line of the syllabus, with the limits of its kind merged in. */
export interface Requirement {
  readonly id: string;
  readonly kind: Kind;
  readonly title: string;
  readonly asks: string | null;
  readonly tiedTo: readonly string[];
  readonly limits: Limits;
  /** Place of the id in the syllabus file. */
  readonly place: Place;
  /** Path of the requirement in the syllabus file, for `Syllabus.places`. */
  readonly path: readonly (string | number)[];
}

export interface Section {
  /** Counts from 1; printed before the title. */
  readonly number: number;
  readonly title: string;
  readonly tab: string;
  readonly requirements: readonly Requirement[];
}

export interface Syllabus {
  readonly file: string;
  readonly title: string;
  readonly sections: readonly Section[];
  readonly places: Places;
}

/** A citation with where it stands. `technique` is set for those in front matter under a technique. */
export interface CitationUse {
  readonly citation: Citation;
  readonly technique: string | null;
  readonly from: 'technique' | 'reviews' | 'body';
  /** What the source calls the technique, where that was noted. */
  readonly calledThere: string | null;
  readonly place: Place;
  readonly keyPlace: Place;
}

interface ItemOf<K extends Kind> {
  readonly kind: K;
  /** The requirement's id as the item's front matter states it. */
  readonly id: string;
  /** Null when the syllabus does not name `id`. */
  readonly requirement: Requirement | null;
  readonly file: string;
  /** The file without its byte order mark and with lines that end in `\n`: what lines and columns count in. */
  readonly text: string;
  /** The requirement's title unless the item has its own. */
  readonly title: string;
  readonly fields: FieldsOf<K>;
  readonly places: Places;
  readonly body: Body;
  readonly citations: readonly CitationUse[];
}

/** The Markdown file that answers a requirement. */
export type Item = {[K in Kind]: ItemOf<K>}[Kind];
export type ItemOfKind<K extends Kind> = Extract<Item, {kind: K}>;

export interface LibraryEntry {
  readonly source: Source;
  readonly file: string;
  /** Place of the key. */
  readonly place: Place;
  /** Places within the library file, for paths that begin with `path`. */
  readonly places: Places;
  readonly path: readonly (string | number)[];
}

/** The candidate's scraps of reading; empty while none were kept. */
export interface Clippings {
  readonly file: string;
  readonly entries: readonly Clipping[];
}

export interface Assessment extends AssessmentData {
  readonly file: string;
  readonly places: Places;
}

/** What was posted in one round. `items` are paths within the folder of `file`. */
export interface SentRound extends SentRoundData {
  readonly file: string;
  readonly places: Places;
}

/** What the candidate recorded as printed; the entries are empty while nothing was. */
export interface PrintLedger {
  readonly entries: readonly LedgerEntry[];
  readonly file: string;
  readonly places: Places;
}

/** What a decoder found in a picture, or why it could not. Pixels are counted after turning the picture upright. */
export type PhotoFacts =
  | {
      readonly ok: true;
      readonly width: number;
      readonly height: number;
      readonly format: 'jpeg' | 'png' | 'webp';
    }
  | {
      readonly ok: false;
      readonly reason: 'missing' | 'empty' | 'unreadable' | 'too large' | 'outside the binder';
    };

/** Everything the candidate wrote, typed and read-only. Rules, tables and layouts see this and nothing else. */
export interface Binder {
  readonly settings: BinderSettings;
  readonly settingsFile: string;
  readonly settingsPlaces: Places;
  readonly syllabus: Syllabus;
  /** In syllabus order; items for no requirement and second items for one requirement come last, by file name. */
  readonly items: readonly Item[];
  readonly library: readonly LibraryEntry[];
  readonly clippings: Clippings;
  /** The citation style of `settings.csl`; null without one. */
  readonly ownStyle: OwnStyle | null;
  readonly assessments: readonly Assessment[];
  /** By round, as far as they could be read. */
  readonly sentRounds: readonly SentRound[];
  readonly ledger: PrintLedger;
  /** By file name within `content/photos`. */
  readonly photos: ReadonlyMap<string, PhotoFacts>;
  /** Severities and tolerances by rule id: the binder file's over the syllabus's. */
  readonly ruleSettings: Readonly<Record<string, RuleSetting>>;
  /** Today, year-month-day, as told by the caller. */
  readonly today: string;
  /** What was found while reading; already with places. */
  readonly readFindings: readonly Finding[];
}

/** The first item for each requirement id: the one that is printed. */
export function itemsById(binder: Binder): ReadonlyMap<string, Item> {
  const byId = new Map<string, Item>();
  for (const item of binder.items) if (!byId.has(item.id)) byId.set(item.id, item);
  return byId;
}

/** Every requirement in the order of the syllabus. */
export function requirementsOf({syllabus}: Pick<Binder, 'syllabus'>): readonly Requirement[] {
  return syllabus.sections.flatMap(({requirements}) => requirements);
}
