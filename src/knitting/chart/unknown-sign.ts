import {nearestName} from '../../support/nearest-name.ts';
import type {Problem, Span} from '../../support/result.ts';

export function reportUnknownSign(
  symbol: string,
  known: readonly string[],
  span: Span,
  problems: Problem[],
): void {
  const near = symbol.length > 1 ? nearestName(symbol, known) : undefined;
  problems.push({
    message: `the key does not name \`${symbol}\``,
    hint: near
      ? `Write \`${near}\` if that is what was meant, or add a line such as \`${symbol} = k\` to the key.`
      : `Add a line such as \`${symbol} = k\` or \`${symbol} = colour chalk\` to the key.`,
    span,
  });
}
