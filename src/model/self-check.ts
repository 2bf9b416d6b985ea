import type {Item} from './binder.ts';
import {type Kind, kindsWithKnitting} from './kinds.ts';

/**
 * What no program can see, to be looked over before the box is closed (common practice, no source). Sentences to tick:
 * each says how it should be.
 */
const ofKnitting = [
  'Ends are woven in and trimmed; none shows.',
  'Pins and markers are out, all of them counted.',
  'No stitch is split, dropped or twisted by mistake.',
  'It is clean and quite dry, and lies as it should.',
  'Piece and sheet say the same.',
  'The tag is on, bears this number and hangs free.',
];

const ofText = [
  'Every part of what is asked is answered.',
  'It was read aloud once from the printed page.',
  'Each page that is cited was looked up once more.',
];

const byKind: Readonly<Record<Kind, readonly string[]>> = {
  swatch: ofKnitting,
  project: [
    ...ofKnitting,
    'It was tried on, or laid against its measures.',
    'Buttons and other fastenings hold.',
  ],
  pattern: [
    'It was knitted once from the page, word for word.',
    'Every size was read through by itself.',
    'Every abbreviation and every sign is explained.',
    'The photo shows the piece that the pattern makes.',
  ],
  question: [...ofText, 'It was read beside the knitting it belongs to.'],
  report: [...ofText, 'What was tried and what was read are told apart.'],
  review: [...ofText, 'The book was at hand; opinions have their reasons.'],
  letter: [
    'It is signed by hand.',
    'Name, number, address and date are right.',
    'It names what the box holds.',
  ],
};

/** By the trade's words in the names of the techniques and the title (common practice, no source). */
const byTechnique: readonly {readonly words: RegExp; readonly question: string}[] = [
  {words: /\bssk\b/i, question: 'Each ssk: both stitches were slipped knitwise.'},
  {words: /decreas|k2tog|\bskp\b/i, question: 'Decreases stand in line and lean as planned.'},
  {
    words: /increas|make[ -]one|\bm1/i,
    question: 'No increase leaves a hole.',
  },
  {words: /yarn[ -]?over|lace|eyelet/i, question: 'Every yarn over is there, and open.'},
  {words: /cable|crossing|twist/i, question: 'Every crossing leans the right way.'},
  {words: /strand|float/i, question: 'No float draws in or catches a finger.'},
  {words: /intarsia/i, question: 'Colours are linked at every change, without a hole.'},
  {
    words: /mattress|seam\b|seaming/i,
    question: 'Seamed row for row, no tighter than the cloth.',
  },
  {words: /graft/i, question: 'The grafted row is as even as its neighbours.'},
  {words: /buttonhole/i, question: 'The button goes through and stays buttoned.'},
  {words: /short[ -]row|wrap and turn/i, question: 'No turn leaves a hole, held against the light.'},
  {
    words: /pick(?:ed|ing)?[ -]up/i,
    question: 'The band neither flares nor draws in.',
  },
];

/** The box as a whole, at the very end (common practice, no source). */
export const boxQuestions: readonly string[] = [
  'The packing list is ticked from top to bottom.',
  'Nothing is squeezed: the box closes over the knitting by itself.',
  'Every piece of knitting bears its tag.',
  'No pin, needle or blade lies loose in the box.',
  'Photos or a copy of everything stay at home.',
];

/** What is looked over of one item: for its kind, for its techniques where it is knitting, and what the syllabus adds. */
export function selfCheckOf(item: Item): readonly string[] {
  return [
    ...byKind[item.kind],
    ...(kindsWithKnitting.includes(item.kind) ? forTechniques(item) : []),
    ...(item.requirement?.limits['self-check'] ?? []),
  ];
}

function forTechniques({title, fields}: Item): readonly string[] {
  const techniques = 'techniques' in fields ? fields.techniques.map(({name}) => name) : [];
  const words = [title, ...techniques].join('\n');
  return byTechnique.filter((one) => one.words.test(words)).map(({question}) => question);
}
