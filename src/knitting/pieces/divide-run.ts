import {englishList} from '../../support/english-list.ts';
import {nearestName} from '../../support/nearest-name.ts';
import type {DividedPart} from './piece-syntax.ts';
import {type RunBuilder, startRun, type Trouble} from './run-builder.ts';

/**
 * The named parts of a divide, from the right edge of the right side to the left, as the right-side row comes to them.
 * The first and the last face each other, or what lies between them. Or why the run cannot be divided so.
 */
export function divideRun(
  base: RunBuilder,
  isRound: boolean,
  isDivided: boolean,
  parts: readonly DividedPart[],
): readonly RunBuilder[] | Trouble {
  if (isRound) return roundDivided;
  if (isDivided) return dividedTwice;
  const sum = parts.reduce((total, {count}) => total + count, 0);
  if (sum !== base.stitches || base.ending !== null) {
    return {
      message: `the parts add up to \`${sum}\` stitches, and \`${base.ending === null ? base.stitches : 0}\` are on the needle`,
      hint: 'Write counts that add up, with those on a holder.',
    };
  }
  const working = parts.filter(({name}) => name !== null);
  const runs: RunBuilder[] = [];
  let right = base.rightX;
  for (const part of parts) {
    const left = right - part.count * 2;
    const inner = part === working[0] ? 'left' : part === working.at(-1) ? 'right' : null;
    if (part.name !== null) runs.push(startRun(left, right, base.row, part.name, inner));
    right = left;
  }
  return runs;
}

/** All parts for null. */
export function partsNamed(parts: readonly RunBuilder[], name: string | null): readonly RunBuilder[] {
  return parts.filter((part) => name === null || part.name === name);
}

export function whichPart(parts: readonly RunBuilder[]): Trouble {
  return {
    message: 'it is not said which part this is worked on',
    hint: `Write ${englishList(['`each side:`', ...parts.map(({name}) => `\`${name}:\``)], 'or')} above it.`,
  };
}

export function unknownPart(parts: readonly RunBuilder[], name: string | null): Trouble {
  const names = parts.flatMap((part) => (part.name === null ? [] : [part.name]));
  const near = nearestName(name ?? '', names);
  return {
    message: `no part is called \`${name ?? 'each side'}\``,
    hint: near
      ? `Write \`${near}:\` if that is what was meant.`
      : 'Name the parts where they are divided, such as `divide: 56 left, 2 on a holder, 56 right`.',
  };
}

const roundDivided: Trouble = {
  message: 'a round cannot be divided here',
  hint: 'Write each part as a piece of its own that begins with a line such as `start with 112`.',
};

const dividedTwice: Trouble = {
  message: 'the piece is divided already',
  hint: 'Divide once, into all the parts.',
};
