/** Spellings that mean one word: the first is how the phrase tables write it. */
const spellings = [
  'k knit knits knitting knitted',
  'p purl purls purling purled pearl pearls pearling pearled seam seams seaming seamed',
  'st sts stitch stitches',
  'tog together',
  'sl slip slips slipping slipped slide sliding',
  'yarn yarns wool wools wl thread threads cotton silk worsted th',
  'fwd forward forwards ford fd',
  'psso pso',
  'rep repeat repeats repeating repeated reps',
  'row rows',
  'round rounds rnd rnds rd rds',
  'n narrow narrows narrowing',
  'over o',
  'make making makes mk',
  'inc increase increases increasing incr widen widening incs',
  'incd increased',
  'dec decrease decreases decreasing decr decs',
  'decd decreased',
  'bo bind binding bound',
  'cast casting casts',
  'pass passing passed draw drawing drawn',
  'take taking taken',
  'bring bringing brought put putting',
  'keep keeping',
  'hold holding held',
  'leave leaving left',
  'drop dropping dropped drops',
  'work working worked works',
  'continue cont continuing',
  'remain remains remaining rem',
  'remainder rest',
  'loop loops lp lps',
  'pattern patt pat',
  'last final',
  'next following foll',
  'marker markers mkr',
  'place placing placed',
  'remove removing removed',
  'wrap wrapping wrapped wraps',
  'kwise knitways knitwise',
  'pwise purlways purlwise pearlwise',
  'needle needles ndl pin pins',
  'until till til',
  'time times',
  '& and',
  'x \u00d7',
  'turn turning turned turns',
  'begin beg beginning start commence commencing commencement',
  'finish finishing finishes finished',
  'omit omitting omitted',
  'alternately alternatively',
  'alternate alt',
  'establish established est set',
  'rib ribbing ribbed',
  'between bet btw',
  'colour color',
  'yo yoh',
  'pm plm',
  'sm slm slipm',
  'rm remm',
  'multiple mult',
];

const normal = new Map<string, string>(
  spellings.flatMap((line) => {
    const [word = '', ...others] = line.split(' ');
    return others.map((other): [string, string] => [other, word]);
  }),
);

/** Words that carry no meaning in a row and are passed over wherever they stand. */
const silent = new Set(['the', 'then', 'so', 'also', 'thus', 'just', 'now', 'ever', 'very', 'carefully']);

/** The word as the phrase tables write it. */
export function normalWord(word: string): string {
  return normal.get(word) ?? word;
}

export function isSilent(word: string): boolean {
  return silent.has(word);
}
