import type {Step, WrittenPattern} from './row-syntax.ts';
import type {Dialect, StitchName} from './stitch.ts';

/** One line of the key. */
export interface UsedAbbreviation extends StitchName {
  /** The stitch's id, or the name of an instruction such as `pm`; the order of the key is alphabetical by it. */
  readonly id: string;
}

const instructions: Readonly<Record<string, string>> = {
  BO: 'bind off',
  CO: 'cast on',
  pm: 'place marker',
  sm: 'slip marker',
  rm: 'remove marker',
  'w&t': 'wrap the next stitch and turn',
  psso: 'pass the slipped stitch over',
  rep: 'repeat',
  'st(s)': 'stitch(es)',
  wyib: 'with the yarn in back',
  wyif: 'with the yarn in front',
  RS: 'right side',
  WS: 'wrong side',
  rnd: 'round',
};

const british: Readonly<Record<string, string>> = {BO: 'cast off', CO: 'cast on'};

/** Exactly the abbreviations that the pattern uses, once each, with the words for the key. */
export function usedAbbreviations(pattern: WrittenPattern, dialect: Dialect): UsedAbbreviation[] {
  const used = new Map<string, UsedAbbreviation>();
  const add = (id: string) => {
    const words = (dialect === 'british' ? british[id] : undefined) ?? instructions[id] ?? '';
    const abbreviation = dialect === 'british' && id === 'BO' ? 'cast off' : id;
    if (abbreviation !== words) used.set(id, {id, abbreviation, words});
  };
  const addStep = (step: Step): void => {
    if (step.kind === 'work') {
      used.set(step.stitch.id, {id: step.stitch.id, ...step.stitch.names[dialect]});
      if (step.yarn) add(step.yarn === 'front' ? 'wyif' : 'wyib');
    } else if (step.kind === 'bind off') add('BO');
    else if (step.kind === 'cast on' && step.how === 'cast on') add('CO');
    else if (step.kind === 'marker')
      add(step.action === 'place' ? 'pm' : step.action === 'slip' ? 'sm' : 'rm');
    else if (step.kind === 'turn' && step.how !== 'plain') add('w&t');
    else if (step.kind === 'pass over') add('psso');
    if ((step.kind === 'repeat' && step.style === 'star') || step.kind === 'again') add('rep');
    if ('extent' in step && (step.extent.kind === 'to last' || step.kind === 'bind off')) add('st(s)');
    if ('steps' in step) step.steps.forEach(addStep);
    if (step.kind === 'either') step.ways[0].forEach(addStep);
  };
  for (const entry of pattern.entries) {
    const label = entry.label;
    if (label?.side) add(label.side);
    if (label?.every === 'RS' || label?.every === 'WS') add(label.every);
    if (label?.isRound) add('rnd');
    if (entry.kind === 'repeat rows') add('rep');
    else {
      entry.steps.forEach(addStep);
      if (entry.stated.length > 0) add('st(s)');
    }
  }
  return [...used.values()].sort((a, b) => compareNames(a.abbreviation, b.abbreviation));
}

function compareNames(a: string, b: string): number {
  const [x, y] = [a.toLowerCase(), b.toLowerCase()];
  return x < y ? -1 : x > y ? 1 : 0;
}
