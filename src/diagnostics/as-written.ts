import type {Finding} from './finding.ts';

/**
 * A finding without its `actual` where that does not stand at the place letter for letter: what is quoted, escaped or
 * folded over lines takes more room in the file than its value is long.
 */
export function asWritten(finding: Finding): Finding {
  const {place, actual, ...rest} = finding;
  if (actual === undefined) return finding;
  const isWhole = place.line === place.endLine && place.endColumn - place.column === actual.length;
  return isWhole ? finding : {...rest, place};
}
